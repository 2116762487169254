package kitstow.planner.json;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitstow.planner.model.Accessory;
import kitstow.planner.model.Canopy;
import kitstow.planner.model.Catalogue;
import kitstow.planner.model.Item;
import kitstow.planner.model.ModuleChoice;
import kitstow.planner.model.RuleOverride;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.Stop;
import kitstow.planner.model.Trailer;
import kitstow.planner.model.Tray;
import kitstow.planner.model.Trip;
import kitstow.planner.model.Ute;
import kitstow.planner.problem.JsonPath;

/**
 * Reads a scenario and resolves all that it names. Masses become whole grams, lengths whole
 * millimetres, contents whole millilitres, ratios whole per mille. Tolerances and moving ratings
 * that are not given, here or in the catalogue, are set from the scenario's settings.
 */
public final class ScenarioReader {
  private final Fields fields;
  private final Faults faults;
  private final Known known;
  private final Figures figures;
  private final Shelves shelves;

  private ScenarioReader(Fields fields, Catalogue catalogue, Faults faults) {
    this.fields = fields;
    this.faults = faults;
    this.known = new Known(faults);
    this.figures = SettingsReader.read(fields);
    this.shelves = new Shelves(figures, faults);
    shelves.stock(catalogue);
  }

  /**
   * Reads a scenario.
   *
   * @param text JSON text
   * @param catalogue what it may name beside its own entries
   * @return the scenario, or every fault in the order of the text; bad input is never an exception
   */
  public static Outcome<Scenario> read(String text, Catalogue catalogue) {
    Faults faults = new Faults();
    Optional<Scenario> scenario =
        Document.open(text, JsonPath.root(), "scenario", faults)
            .flatMap(fields -> new ScenarioReader(fields, catalogue, faults).read());
    return scenario.map(faults::outcome).orElseGet(faults::refused);
  }

  private Optional<Scenario> read() {
    String id = fields.id("id");
    String title = fields.text("title", "name it as it shall be shown");
    String note = fields.text("note", "say what the scenario is, e.g. Invented example");
    fields.objectIfGiven("define").ifPresent(shelves::read);

    UteChoiceReader uteChoice = new UteChoiceReader(fields, figures, faults, shelves, known);
    VehicleReader vehicle = new VehicleReader(figures, faults, shelves, known);
    Optional<Tray> tray = vehicle.tray(fields);
    Optional<Canopy> canopy = vehicle.canopy(fields);
    List<Accessory> accessories = vehicle.accessories(fields, tray, canopy);
    ModuleChoiceReader moduleChoice = new ModuleChoiceReader(fields, faults, shelves, known);
    Map<String, Long> startMl = TankStarts.read(fields, known, faults);
    List<Item> items = new GearChoiceReader(shelves, known).read(fields);
    List<Trailer> trailers = new TrailerReader(figures, known).read(fields);
    TowingCheck towing = new TowingCheck(uteChoice.entry());
    trailers.forEach(towing::add);
    SizeCheck sizes = new SizeCheck(uteChoice.entry(), trailers);
    Trip trip = new TripReader(figures, faults, known, vehicle, towing, sizes).read(fields);
    List<Stop> stops = new StopReader(known).read(fields);
    List<RuleOverride> overrides = new OverrideReader(known).read(fields);
    fields.done();

    uteChoice.checkReferences(accessories, fields.has("tray"), fields.has("canopy"));
    checkDoors(uteChoice, tray, canopy);
    shelves.noteUnused();

    Optional<Ute> ute = uteChoice.ute(startMl);
    List<ModuleChoice> modules = moduleChoice.modules(startMl);
    return ute.map(
        found ->
            new Scenario(
                id,
                title,
                note,
                figures.settings(),
                found,
                tray,
                canopy,
                accessories,
                uteChoice.regions().bays(),
                vehicle.trayRegions().bays(),
                vehicle.canopyRegions().bays(),
                uteChoice.regions().spaces(),
                vehicle.trayRegions().spaces(),
                vehicle.canopyRegions().spaces(),
                modules,
                items,
                trailers,
                trip,
                overrides,
                stops));
  }

  private void checkDoors(UteChoiceReader uteChoice, Optional<Tray> tray, Optional<Canopy> canopy) {
    DoorNames doors = new DoorNames(known.doors);
    for (String host : List.of("ute", "tray", "canopy")) {
      fields.again().object(host).forEach(doors::check);
    }
    uteChoice.entry().ifPresent(ute -> doors.check(ute.bays(), ute.spaces(), entryPlace("ute")));
    tray.ifPresent(found -> doors.check(found.bays(), found.spaces(), entryPlace("tray")));
    canopy.ifPresent(found -> doors.check(found.bays(), found.spaces(), entryPlace("canopy")));
  }

  private Place entryPlace(String host) {
    return fields.again().placeIn(host, "entry").orElseGet(() -> fields.place(host));
  }
}
