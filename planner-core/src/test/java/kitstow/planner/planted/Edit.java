package kitstow.planner.planted;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.model.BaySpec;
import kitstow.planner.model.Canopy;
import kitstow.planner.model.FitOutModule;
import kitstow.planner.model.Item;
import kitstow.planner.model.ModuleChoice;
import kitstow.planner.model.Ratings;
import kitstow.planner.model.RoofBars;
import kitstow.planner.model.RoofLimits;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.Slide;
import kitstow.planner.model.SpaceSpec;
import kitstow.planner.model.Trip;
import kitstow.planner.model.Ute;
import kitstow.planner.model.UteLimits;

/** Copies of scenarios with one thing changed. */
final class Edit {
  private Edit() {}

  private static Scenario with(
      Scenario s,
      Ute ute,
      Optional<Canopy> canopy,
      List<SpaceSpec> uteSpaces,
      List<SpaceSpec> canopySpaces,
      List<ModuleChoice> modules,
      List<Item> items,
      Trip trip) {
    return new Scenario(
        s.id(),
        s.title(),
        s.note(),
        s.settings(),
        ute,
        s.tray(),
        canopy,
        s.accessories(),
        s.uteBays(),
        s.trayBays(),
        s.canopyBays(),
        uteSpaces,
        s.traySpaces(),
        canopySpaces,
        modules,
        items,
        s.trailers(),
        trip);
  }

  static Scenario trip(Scenario s, Trip trip) {
    return with(
        s, s.ute(), s.canopy(), s.uteSpaces(), s.canopySpaces(), s.modules(), s.items(), trip);
  }

  static Scenario item(Scenario s, String id, UnaryOperator<Item> change) {
    List<Item> items = new ArrayList<>(s.items());
    items.replaceAll(item -> item.id().equals(id) ? change.apply(item) : item);
    return with(
        s, s.ute(), s.canopy(), s.uteSpaces(), s.canopySpaces(), s.modules(), items, s.trip());
  }

  static Scenario spaceRatings(Scenario s, String id, Ratings ratings) {
    return spaces(s, id, space -> space(space, Optional.of(ratings), space.bars()));
  }

  /** One bar of a rack or platform rated otherwise. */
  static Scenario barRatings(Scenario s, String spaceId, String barId, Ratings ratings) {
    return spaces(
        s,
        spaceId,
        space -> space(space, space.ratings(), space.bars().map(old -> bars(old, barId, ratings))));
  }

  private static RoofBars bars(RoofBars old, String barId, Ratings ratings) {
    List<RoofBars.Bar> bars = new ArrayList<>(old.bars());
    bars.replaceAll(
        bar -> bar.id().equals(barId) ? new RoofBars.Bar(barId, bar.fromFrontMm(), ratings) : bar);
    return new RoofBars(
        bars,
        old.platformFloor(),
        old.projectionFrontMm(),
        old.projectionRearMm(),
        old.projectionSideMm());
  }

  private static SpaceSpec space(
      SpaceSpec space, Optional<Ratings> ratings, Optional<RoofBars> bars) {
    return new SpaceSpec(
        space.id(),
        space.title(),
        space.box(),
        ratings,
        space.access(),
        space.doorIds(),
        space.moves(),
        space.zone(),
        space.environment(),
        space.ownAir(),
        bars);
  }

  private static Scenario spaces(Scenario s, String id, UnaryOperator<SpaceSpec> change) {
    List<SpaceSpec> ofUte = new ArrayList<>(s.uteSpaces());
    List<SpaceSpec> ofCanopy = new ArrayList<>(s.canopySpaces());
    ofUte.replaceAll(space -> space.id().equals(id) ? change.apply(space) : space);
    ofCanopy.replaceAll(space -> space.id().equals(id) ? change.apply(space) : space);
    return with(s, s.ute(), s.canopy(), ofUte, ofCanopy, s.modules(), s.items(), s.trip());
  }

  static Scenario canopyRoof(Scenario s, RoofLimits roof) {
    Optional<Canopy> canopy =
        s.canopy()
            .map(
                c ->
                    new Canopy(
                        c.id(),
                        c.title(),
                        c.source(),
                        c.size(),
                        c.mass(),
                        c.inside(),
                        c.doors(),
                        Optional.of(roof),
                        c.liftOffLegs(),
                        c.bays(),
                        c.spaces(),
                        c.fromTrayFrontMm()));
    return with(
        s, s.ute(), canopy, s.uteSpaces(), s.canopySpaces(), s.modules(), s.items(), s.trip());
  }

  static Scenario slideRatings(Scenario s, String moduleId, Ratings ratings) {
    return module(
        s,
        moduleId,
        m -> {
          Slide old = m.slide().orElseThrow();
          Slide slide =
              new Slide(
                  old.extensionMm(), ratings, old.contentsOnly(), old.lockIn(), old.lockOut());
          return module(m, Optional.of(slide), m.bays());
        });
  }

  /** A bay on a module rated so. */
  static Scenario bayRatings(Scenario s, String moduleId, String bayId, Ratings ratings) {
    return module(
        s,
        moduleId,
        m -> {
          List<BaySpec> bays = new ArrayList<>(m.bays());
          bays.replaceAll(bay -> bay.id().equals(bayId) ? bay(bay, ratings) : bay);
          return module(m, m.slide(), bays);
        });
  }

  private static BaySpec bay(BaySpec bay, Ratings ratings) {
    return new BaySpec(
        bay.id(),
        bay.title(),
        bay.box(),
        bay.facing(),
        bay.doorIds(),
        Optional.of(ratings),
        bay.moves(),
        bay.zone(),
        bay.environment(),
        bay.ownAir(),
        bay.spaceWhenEmpty());
  }

  private static FitOutModule module(FitOutModule m, Optional<Slide> slide, List<BaySpec> bays) {
    return new FitOutModule(
        m.id(),
        m.title(),
        m.entryId(),
        m.source(),
        m.size(),
        m.fixed(),
        m.moving(),
        slide,
        m.rating(),
        m.spaces(),
        bays,
        m.tanks());
  }

  private static Scenario module(Scenario s, String id, UnaryOperator<FitOutModule> change) {
    List<ModuleChoice> modules = new ArrayList<>(s.modules());
    modules.replaceAll(
        choice ->
            choice.module().id().equals(id)
                ? new ModuleChoice(
                    change.apply(choice.module()), choice.bayIds(), choice.need(), choice.value())
                : choice);
    return with(
        s, s.ute(), s.canopy(), s.uteSpaces(), s.canopySpaces(), modules, s.items(), s.trip());
  }

  static Scenario limits(Scenario s, UnaryOperator<UteLimits> change) {
    Ute u = s.ute();
    return with(
        s,
        ute(u, u.wheelbaseMm(), change.apply(u.limits())),
        s.canopy(),
        s.uteSpaces(),
        s.canopySpaces(),
        s.modules(),
        s.items(),
        s.trip());
  }

  static Scenario wheelbase(Scenario s, int wheelbaseMm) {
    Ute u = s.ute();
    return with(
        s,
        ute(u, wheelbaseMm, u.limits()),
        s.canopy(),
        s.uteSpaces(),
        s.canopySpaces(),
        s.modules(),
        s.items(),
        s.trip());
  }

  private static Ute ute(Ute u, int wheelbaseMm, UteLimits limits) {
    return new Ute(
        u.id(),
        u.title(),
        u.source(),
        wheelbaseMm,
        u.frontTrackMm(),
        u.rearTrackMm(),
        u.empty(),
        u.emptyHeightMm(),
        u.emptyHeightSource(),
        limits,
        u.frontTyres(),
        u.rearTyres(),
        u.seats(),
        u.fuelTanks(),
        u.ball(),
        u.parts(),
        u.springHangers(),
        u.foremostXMm(),
        u.rearmostXMm(),
        u.cabRoofZMm(),
        u.bays(),
        u.spaces());
  }

  /** Whether two boxes share volume; written here so that the tests need no code of the planner. */
  static boolean share(BoxMm a, BoxMm b) {
    return a.minXMm() < b.maxXMm()
        && b.minXMm() < a.maxXMm()
        && a.minYMm() < b.maxYMm()
        && b.minYMm() < a.maxYMm()
        && a.minZMm() < b.maxZMm()
        && b.minZMm() < a.maxZMm();
  }

  /** Whether one footprint lies over part of another. */
  static boolean over(BoxMm a, BoxMm b) {
    return a.minXMm() < b.maxXMm()
        && b.minXMm() < a.maxXMm()
        && a.minYMm() < b.maxYMm()
        && b.minYMm() < a.maxYMm();
  }
}
