package kitstow.planner.model;

import java.util.List;
import java.util.Optional;
import kitstow.planner.geometry.BoxMm;

/**
 * Everything the planner is asked about, with all catalogue references resolved.
 *
 * @param id file id
 * @param title shown to people
 * @param note what the scenario is; demos say that they are invented
 * @param settings settings
 * @param ute the ute
 * @param tray the tray, if one is fitted
 * @param canopy the canopy, if one is fitted; needs a tray
 * @param accessories fixed additions
 * @param uteBays bays the scenario adds on the ute
 * @param trayBays bays the scenario adds on the tray, tray frame
 * @param canopyBays bays the scenario adds in the canopy, canopy frame
 * @param uteSpaces spaces the scenario adds on the ute
 * @param traySpaces spaces the scenario adds on the tray, tray frame
 * @param canopySpaces spaces the scenario adds in or on the canopy, canopy frame
 * @param modules modules and the bays they may stand in
 * @param items gear
 * @param trailers trailers
 * @param trip the trip
 * @param overrides rules that are not kept, each with a written reason
 * @param stops where not everything opens and emergency gear must come out all the same
 */
public record Scenario(
    String id,
    String title,
    String note,
    Settings settings,
    Ute ute,
    Optional<Tray> tray,
    Optional<Canopy> canopy,
    List<Accessory> accessories,
    List<BaySpec> uteBays,
    List<BaySpec> trayBays,
    List<BaySpec> canopyBays,
    List<SpaceSpec> uteSpaces,
    List<SpaceSpec> traySpaces,
    List<SpaceSpec> canopySpaces,
    List<ModuleChoice> modules,
    List<Item> items,
    List<Trailer> trailers,
    Trip trip,
    List<RuleOverride> overrides,
    List<Stop> stops) {
  /** Copies its collections. */
  public Scenario {
    accessories = List.copyOf(accessories);
    uteBays = List.copyOf(uteBays);
    trayBays = List.copyOf(trayBays);
    canopyBays = List.copyOf(canopyBays);
    uteSpaces = List.copyOf(uteSpaces);
    traySpaces = List.copyOf(traySpaces);
    canopySpaces = List.copyOf(canopySpaces);
    modules = List.copyOf(modules);
    items = List.copyOf(items);
    trailers = List.copyOf(trailers);
    overrides = List.copyOf(overrides);
    stops = List.copyOf(stops);
  }

  /** A scenario that keeps every rule, wherever it stands. */
  public Scenario(
      String id,
      String title,
      String note,
      Settings settings,
      Ute ute,
      Optional<Tray> tray,
      Optional<Canopy> canopy,
      List<Accessory> accessories,
      List<BaySpec> uteBays,
      List<BaySpec> trayBays,
      List<BaySpec> canopyBays,
      List<SpaceSpec> uteSpaces,
      List<SpaceSpec> traySpaces,
      List<SpaceSpec> canopySpaces,
      List<ModuleChoice> modules,
      List<Item> items,
      List<Trailer> trailers,
      Trip trip) {
    this(
        id,
        title,
        note,
        settings,
        ute,
        tray,
        canopy,
        accessories,
        uteBays,
        trayBays,
        canopyBays,
        uteSpaces,
        traySpaces,
        canopySpaces,
        modules,
        items,
        trailers,
        trip,
        /* overrides= */ List.of(),
        /* stops= */ List.of());
  }

  /** The canopy as a body that nothing outside it may reach into, vehicle frame. */
  public Optional<BoxMm> canopyBody() {
    return tray.flatMap(under -> canopy.map(one -> one.outsideOn(under)));
  }

  /** The same scenario with another ute, or the same one loaded or weighed otherwise. */
  public Scenario withUte(Ute other) {
    return with(title, note, other, modules, items, trailers, trip, overrides, stops);
  }

  /**
   * The same scenario with another tray and canopy and the accessories that go with them, or the
   * same ones elsewhere. Bays and spaces that the scenario itself adds to tray and canopy stay only
   * in one of the same size.
   */
  public Scenario withBody(Optional<Tray> onto, Optional<Canopy> box, List<Accessory> fixed) {
    boolean asLong = onto.map(Tray::size).equals(tray.map(Tray::size));
    boolean asLarge = box.map(Canopy::size).equals(canopy.map(Canopy::size));
    return new Scenario(
        id,
        title,
        note,
        settings,
        ute,
        onto,
        box,
        fixed,
        uteBays,
        asLong ? trayBays : List.of(),
        asLarge ? canopyBays : List.of(),
        uteSpaces,
        asLong ? traySpaces : List.of(),
        asLarge ? canopySpaces : List.of(),
        modules,
        items,
        trailers,
        trip,
        overrides,
        stops);
  }

  /** The same scenario with other modules, or modules otherwise filled. */
  public Scenario withModules(List<ModuleChoice> others) {
    return with(title, note, ute, others, items, trailers, trip, overrides, stops);
  }

  /** The same scenario under another title, with another note. */
  public Scenario titled(String name, String what) {
    return with(name, what, ute, modules, items, trailers, trip, overrides, stops);
  }

  /** The same scenario with other gear. */
  public Scenario withItems(List<Item> others) {
    return with(title, note, ute, modules, others, trailers, trip, overrides, stops);
  }

  /** The same scenario on another trip. */
  public Scenario withTrip(List<Trailer> towed, Trip driven) {
    return with(title, note, ute, modules, items, towed, driven, overrides, stops);
  }

  /** The same scenario with other rules not kept. */
  public Scenario withOverrides(List<RuleOverride> others) {
    return with(title, note, ute, modules, items, trailers, trip, others, stops);
  }

  /** The same scenario with other places where not everything opens. */
  public Scenario withStops(List<Stop> others) {
    return with(title, note, ute, modules, items, trailers, trip, overrides, others);
  }

  private Scenario with(
      String name,
      String what,
      Ute vehicle,
      List<ModuleChoice> fitted,
      List<Item> gear,
      List<Trailer> towed,
      Trip driven,
      List<RuleOverride> not,
      List<Stop> shut) {
    return new Scenario(
        id,
        name,
        what,
        settings,
        vehicle,
        tray,
        canopy,
        accessories,
        uteBays,
        trayBays,
        canopyBays,
        uteSpaces,
        traySpaces,
        canopySpaces,
        fitted,
        gear,
        towed,
        driven,
        not,
        shut);
  }
}
