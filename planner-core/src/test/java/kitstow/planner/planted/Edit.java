package kitstow.planner.planted;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.model.FitOutModule;
import kitstow.planner.model.Item;
import kitstow.planner.model.ModuleChoice;
import kitstow.planner.model.Ratings;
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
        s.canopy(),
        s.accessories(),
        s.uteBays(),
        s.trayBays(),
        s.canopyBays(),
        s.uteSpaces(),
        s.traySpaces(),
        canopySpaces,
        modules,
        items,
        s.trailers(),
        trip);
  }

  static Scenario trip(Scenario s, Trip trip) {
    return with(s, s.ute(), s.canopySpaces(), s.modules(), s.items(), trip);
  }

  static Scenario item(Scenario s, String id, UnaryOperator<Item> change) {
    List<Item> items = new ArrayList<>(s.items());
    items.replaceAll(item -> item.id().equals(id) ? change.apply(item) : item);
    return with(s, s.ute(), s.canopySpaces(), s.modules(), items, s.trip());
  }

  static Scenario spaceRatings(Scenario s, String id, Ratings ratings) {
    List<SpaceSpec> spaces = new ArrayList<>(s.canopySpaces());
    spaces.replaceAll(
        space ->
            space.id().equals(id)
                ? new SpaceSpec(
                    space.id(),
                    space.title(),
                    space.box(),
                    java.util.Optional.of(ratings),
                    space.access(),
                    space.doorIds(),
                    space.moves(),
                    space.zone(),
                    space.environment(),
                    space.ownAir(),
                    space.bars())
                : space);
    return with(s, s.ute(), spaces, s.modules(), s.items(), s.trip());
  }

  static Scenario slideRatings(Scenario s, String moduleId, Ratings ratings) {
    List<ModuleChoice> modules = new ArrayList<>(s.modules());
    modules.replaceAll(
        choice -> {
          FitOutModule m = choice.module();
          if (!m.id().equals(moduleId)) {
            return choice;
          }
          Slide old = m.slide().orElseThrow();
          FitOutModule changed =
              new FitOutModule(
                  m.id(),
                  m.title(),
                  m.entryId(),
                  m.source(),
                  m.size(),
                  m.fixed(),
                  m.moving(),
                  java.util.Optional.of(
                      new Slide(
                          old.extensionMm(),
                          ratings,
                          old.contentsOnly(),
                          old.lockIn(),
                          old.lockOut())),
                  m.rating(),
                  m.spaces(),
                  m.bays(),
                  m.tanks());
          return new ModuleChoice(changed, choice.bayIds(), choice.need(), choice.value());
        });
    return with(s, s.ute(), s.canopySpaces(), modules, s.items(), s.trip());
  }

  static Scenario limits(Scenario s, UnaryOperator<UteLimits> change) {
    Ute u = s.ute();
    return with(
        s,
        ute(u, u.wheelbaseMm(), change.apply(u.limits())),
        s.canopySpaces(),
        s.modules(),
        s.items(),
        s.trip());
  }

  static Scenario wheelbase(Scenario s, int wheelbaseMm) {
    Ute u = s.ute();
    return with(
        s, ute(u, wheelbaseMm, u.limits()), s.canopySpaces(), s.modules(), s.items(), s.trip());
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
