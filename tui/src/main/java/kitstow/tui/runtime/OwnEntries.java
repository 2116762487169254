package kitstow.tui.runtime;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import kitstow.planner.model.Accessory;
import kitstow.planner.model.Canopy;
import kitstow.planner.model.FitOutModule;
import kitstow.planner.model.Item;
import kitstow.planner.model.ModuleChoice;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.Tray;
import kitstow.planner.model.Ute;

/**
 * A scenario that describes all it names under entry ids of its own, so that it can be read beside
 * any catalogue: an id of the catalogue always means the catalogue's thing.
 */
final class OwnEntries {
  private static final String OWN = "my-";

  private final String prefix;

  private OwnEntries(String prefix) {
    this.prefix = prefix;
  }

  /**
   * The same scenario under such ids. All get the same prefix, so that no two fall together; a
   * scenario all of whose ids have it already keeps them.
   */
  static Scenario of(Scenario scenario) {
    boolean allOwn = ids(scenario).stream().allMatch(id -> id.startsWith(OWN));
    return new OwnEntries(allOwn ? "" : OWN).renamed(scenario);
  }

  private static List<String> ids(Scenario s) {
    List<String> ids = new ArrayList<>(List.of(s.ute().id()));
    s.tray().ifPresent(tray -> ids.add(tray.id()));
    s.canopy().ifPresent(canopy -> ids.add(canopy.id()));
    s.accessories().forEach(accessory -> ids.add(accessory.entryId()));
    s.modules().forEach(choice -> ids.add(choice.module().entryId()));
    s.items().forEach(item -> ids.add(item.entryId()));
    return ids;
  }

  private Scenario renamed(Scenario s) {
    Scenario own =
        new Scenario(
            s.id(),
            s.title(),
            s.note(),
            s.settings(),
            ute(s.ute()),
            s.tray().map(this::tray),
            s.canopy().map(this::canopy),
            each(s.accessories(), this::accessory),
            s.uteBays(),
            s.trayBays(),
            s.canopyBays(),
            s.uteSpaces(),
            s.traySpaces(),
            s.canopySpaces(),
            each(s.modules(), this::module),
            each(s.items(), this::item),
            s.trailers(),
            s.trip());
    return own.withOverrides(s.overrides()).withStops(s.stops());
  }

  private static <T> List<T> each(List<T> all, UnaryOperator<T> own) {
    return all.stream().map(own).collect(Collectors.toList());
  }

  private String own(String id) {
    return prefix + id;
  }

  private Ute ute(Ute u) {
    return new Ute(
        own(u.id()),
        u.title(),
        u.source(),
        u.wheelbaseMm(),
        u.frontTrackMm(),
        u.rearTrackMm(),
        u.empty(),
        u.emptyHeightMm(),
        u.emptyHeightSource(),
        u.limits(),
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

  private Tray tray(Tray t) {
    return new Tray(
        own(t.id()),
        t.title(),
        t.source(),
        t.size(),
        t.mass(),
        t.rating(),
        t.headboardHeightMm(),
        t.bays(),
        t.spaces(),
        t.frontXMm(),
        t.deckZMm());
  }

  private Canopy canopy(Canopy c) {
    return new Canopy(
        own(c.id()),
        c.title(),
        c.source(),
        c.size(),
        c.mass(),
        c.inside(),
        c.doors(),
        c.roof(),
        c.liftOffLegs(),
        c.bays(),
        c.spaces(),
        c.fromTrayFrontMm());
  }

  private Accessory accessory(Accessory a) {
    return new Accessory(
        a.id(), a.title(), own(a.entryId()), a.source(), a.mass(), a.box(), a.roof());
  }

  private ModuleChoice module(ModuleChoice choice) {
    FitOutModule m = choice.module();
    return new ModuleChoice(
        new FitOutModule(
            m.id(),
            m.title(),
            own(m.entryId()),
            m.source(),
            m.size(),
            m.fixed(),
            m.moving(),
            m.slide(),
            m.rating(),
            m.spaces(),
            m.bays(),
            m.tanks()),
        choice.bayIds(),
        choice.need(),
        choice.value());
  }

  private Item item(Item i) {
    return new Item(
        i.id(),
        i.title(),
        own(i.entryId()),
        i.source(),
        i.shapes(),
        i.mass(),
        i.content(),
        i.turns(),
        i.bearsG(),
        i.keepClear(),
        i.marks(),
        i.reach(),
        i.group(),
        i.need(),
        i.value(),
        i.quantity(),
        i.growth(),
        i.pin());
  }
}
