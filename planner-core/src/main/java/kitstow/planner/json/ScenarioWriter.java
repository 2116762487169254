package kitstow.planner.json;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitstow.planner.model.Accessory;
import kitstow.planner.model.FitOutModule;
import kitstow.planner.model.ModuleChoice;
import kitstow.planner.model.PartState;
import kitstow.planner.model.RemovablePart;
import kitstow.planner.model.RuleOverride;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.Settings;
import kitstow.planner.model.Stop;
import kitstow.planner.model.Tank;

/**
 * Writes a scenario that needs no catalogue: all it names is described in it. Its ids stay as they
 * are, so that it must be read with {@link kitstow.planner.model.Catalogue#EMPTY}; it is the same
 * scenario then. The same scenario always makes the same text. Tolerances are written as figures,
 * not as ratios.
 */
public final class ScenarioWriter {
  private final Scenario scenario;
  private final Output out;
  private final RegionWriter regions;
  private final GearWriter gear;
  private final Map<String, FitOutModule> moduleEntries = new LinkedHashMap<>();
  private final Map<String, Accessory> accessoryEntries = new LinkedHashMap<>();

  private ScenarioWriter(Scenario scenario, Output out) {
    this.scenario = scenario;
    this.out = out;
    this.regions = new RegionWriter(out, scenario.settings());
    this.gear = new GearWriter(out, scenario.items());
    for (ModuleChoice choice : scenario.modules()) {
      moduleEntries.putIfAbsent(choice.module().entryId(), choice.module());
    }
    for (Accessory accessory : scenario.accessories()) {
      accessoryEntries.putIfAbsent(accessory.entryId(), accessory);
    }
  }

  /**
   * Writes a scenario.
   *
   * @param scenario a scenario as it was read; of one built otherwise, what the format cannot say
   *     is lost, such as a source of its own for a module's moving mass
   * @return JSON text, ended by a line feed
   */
  public static String write(Scenario scenario) {
    return Output.text(out -> new ScenarioWriter(scenario, out).scenario());
  }

  private void scenario() {
    out.whole("schemaVersion", 1);
    out.text("kind", "scenario");
    out.text("id", scenario.id());
    out.text("title", scenario.title());
    out.text("note", scenario.note());
    out.object("settings", fields -> settings(scenario.settings()));
    out.object("define", fields -> define());
    out.object("ute", fields -> ute());
    scenario
        .tray()
        .ifPresent(
            tray ->
                out.object(
                    "tray",
                    fields -> {
                      fields.text("entry", tray.id());
                      fields.whole("frontXMm", tray.frontXMm());
                      fields.whole("deckZMm", tray.deckZMm());
                      regions.hostBays(scenario.trayBays());
                      regions.hostSpaces(scenario.traySpaces());
                    }));
    scenario
        .canopy()
        .ifPresent(
            canopy ->
                out.object(
                    "canopy",
                    fields -> {
                      fields.text("entry", canopy.id());
                      fields.whole("fromTrayFrontMm", canopy.fromTrayFrontMm());
                      regions.hostBays(scenario.canopyBays());
                      regions.hostSpaces(scenario.canopySpaces());
                    }));
    out.list("accessories", scenario.accessories(), this::accessory);
    out.list("modules", scenario.modules(), this::module);
    out.list(
        "tanks",
        startedTanks(),
        tank -> {
          out.text("id", tank.id());
          out.milli("startL", tank.startMl());
        });
    out.listAlways("gear", scenario.items(), gear::choice);
    TripWriter trips = new TripWriter(out);
    out.list("trailers", scenario.trailers(), trips::trailer);
    out.object("trip", fields -> trips.trip(scenario.trip()));
    out.list("stops", scenario.stops(), this::stop);
    out.list("overrides", scenario.overrides(), this::override);
  }

  private void stop(Stop stop) {
    out.text("id", stop.id());
    out.text("title", stop.title());
    out.words("shutSides", stop.shutSides());
    if (stop.shutBelowMm() > 0) {
      out.whole("shutBelowMm", stop.shutBelowMm());
    }
    out.texts("shutDoors", stop.shutDoorIds());
  }

  private void override(RuleOverride override) {
    out.text("rule", override.rule().name());
    if (!override.subjectIds().isEmpty()) {
      out.textsAlways("subjects", override.subjectIds());
    }
    out.text("reason", override.reason());
  }

  private void settings(Settings settings) {
    out.word("massLimits", settings.massLimits());
    out.word("kerbSide", settings.kerbSide());
    out.milli("supportRatio", settings.supportPermille());
    out.whole("apertureClearanceMm", settings.apertureClearanceMm());
    out.milli("roadDerateRatio", settings.roadDeratePermille());
    out.milli("offRoadDerateRatio", settings.offRoadDeratePermille());
    out.milli("offRoadRoofRatio", settings.offRoadRoofPermille());
    out.milli("roofGearKg", settings.roofGearG());
    out.milli("leftRightLimitKg", settings.leftRightLimitG());
    out.milli("frontShareSoloRatio", settings.frontShareSoloPermille());
    out.milli("frontShareTowingRatio", settings.frontShareTowingPermille());
    out.milli("frontDropRatio", settings.frontDropPermille());
    out.milli("seatAllowanceKg", settings.seatAllowanceG());
    out.milli("liquidToleranceRatio", settings.liquidTolerancePermille());
    out.milli("ballShareLeastRatio", settings.regimes().ballShareLeastPermille());
    out.milli("ballShareMostRatio", settings.regimes().ballShareMostPermille());
    out.milli("frontFloorRatio", settings.regimes().frontFloorPermille());
    out.word("rearOverhang", settings.regimes().rearOverhang());
  }

  private void define() {
    VehicleWriter vehicle = new VehicleWriter(out, regions);
    ModuleWriter modules = new ModuleWriter(out, regions);
    out.list("utes", List.of(scenario.ute()), vehicle::ute);
    out.list("trays", listOf(scenario.tray()), vehicle::tray);
    out.list("canopies", listOf(scenario.canopy()), vehicle::canopy);
    out.list("modules", moduleEntries.values(), modules::module);
    out.list("accessories", accessoryEntries.values(), vehicle::accessory);
    out.list("gear", gear.entries(), gear::entry);
  }

  private static <T> List<T> listOf(Optional<T> value) {
    return value.map(List::of).orElse(List.of());
  }

  private void ute() {
    out.text("entry", scenario.ute().id());
    List<RemovablePart> moved = new ArrayList<>();
    for (RemovablePart part : scenario.ute().parts()) {
      if (part.state() != PartState.ON) {
        moved.add(part);
      }
    }
    out.list(
        "parts",
        moved,
        part -> {
          out.text("id", part.id());
          out.word("state", part.state());
          out.text("stowedAs", part.stowedAsItemId());
        });
    regions.hostBays(scenario.uteBays());
    regions.hostSpaces(scenario.uteSpaces());
  }

  private void accessory(Accessory accessory) {
    out.text("id", accessory.id());
    out.text("entry", accessory.entryId());
    out.word("on", Carrier.VEHICLE);
    out.point(
        "cornerMm", accessory.box().minXMm(), accessory.box().minYMm(), accessory.box().minZMm());
    accessory.roof().ifPresent(roof -> out.word("roof", roof));
  }

  private void module(ModuleChoice choice) {
    FitOutModule module = choice.module();
    out.text("id", module.id());
    out.text("entry", module.entryId());
    Optional<FitOutModule> entry = Optional.ofNullable(moduleEntries.get(module.entryId()));
    if (!entry.map(FitOutModule::title).equals(Optional.of(module.title()))) {
      out.text("title", module.title());
    }
    out.textsAlways("bays", choice.bayIds());
    out.word("need", choice.need());
    if (choice.value() != ChoiceFields.usualValue(choice.need())) {
      out.whole("value", choice.value());
    }
  }

  private List<Tank> startedTanks() {
    List<Tank> tanks = new ArrayList<>(scenario.ute().fuelTanks());
    scenario.modules().forEach(choice -> tanks.addAll(choice.module().tanks()));
    tanks.removeIf(tank -> tank.startMl() == tank.capacityMl());
    return tanks;
  }
}
