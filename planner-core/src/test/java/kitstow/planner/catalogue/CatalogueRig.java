package kitstow.planner.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitstow.planner.model.Canopy;
import kitstow.planner.model.Catalogue;
import kitstow.planner.model.Consumption;
import kitstow.planner.model.FitOutModule;
import kitstow.planner.model.ModuleChoice;
import kitstow.planner.model.Need;
import kitstow.planner.model.Rig;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.Settings;
import kitstow.planner.model.Tray;
import kitstow.planner.model.Trip;
import kitstow.planner.model.Ute;

/**
 * A ute, a tray and a canopy of the catalogue put together, with nothing else aboard.
 *
 * @param ute the ute
 * @param tray the tray with its rear axle where the ute has it
 * @param canopy the canopy at the tail of the tray
 */
record CatalogueRig(Ute ute, Tray tray, Canopy canopy) {
  private static final int DECK_Z_MM = 930;

  /** Rear axle behind the front edge of the tray, by tray id. */
  static final Map<String, Integer> REAR_AXLE_MM =
      Map.of(
          "tray-1800-aluminium", 330,
          "tray-1800-steel", 330,
          "tray-2200-aluminium", 700,
          "tray-2550-aluminium", 1050);

  private static final Map<String, String> TRAY_OF_UTE =
      Map.of(
          "mid-dual-cab-tub", "tray-1800-steel",
          "mid-dual-cab-chassis", "tray-1800-aluminium",
          "mid-extended-cab-chassis", "tray-2200-aluminium",
          "large-single-cab-chassis-upgraded", "tray-2550-aluminium");

  /** Every ute on its tray with every canopy. */
  static List<CatalogueRig> all(Catalogue catalogue) {
    List<CatalogueRig> rigs = new ArrayList<>();
    for (Ute ute : catalogue.utes()) {
      for (Tray tray : catalogue.trays()) {
        if (tray.id().equals(TRAY_OF_UTE.get(ute.id()))) {
          catalogue.canopies().forEach(canopy -> rigs.add(of(ute, tray, canopy)));
        }
      }
    }
    return rigs;
  }

  private static CatalogueRig of(Ute ute, Tray tray, Canopy canopy) {
    int frontXMm = ute.wheelbaseMm() - REAR_AXLE_MM.get(tray.id());
    int fromTrayFrontMm = tray.size().lengthMm() - canopy.size().lengthMm();
    return new CatalogueRig(ute, at(tray, frontXMm), at(canopy, fromTrayFrontMm));
  }

  private static Tray at(Tray tray, int frontXMm) {
    return new Tray(
        tray.id(),
        tray.title(),
        tray.source(),
        tray.size(),
        tray.mass(),
        tray.rating(),
        tray.headboardHeightMm(),
        tray.bays(),
        tray.spaces(),
        frontXMm,
        DECK_Z_MM);
  }

  private static Canopy at(Canopy canopy, int fromTrayFrontMm) {
    return new Canopy(
        canopy.id(),
        canopy.title(),
        canopy.source(),
        canopy.size(),
        canopy.mass(),
        canopy.inside(),
        canopy.doors(),
        canopy.roof(),
        canopy.liftOffLegs(),
        canopy.bays(),
        canopy.spaces(),
        fromTrayFrontMm);
  }

  /** The rig with modules of the shipped catalogue in bays. */
  Rig with(Map<String, String> bayByModule) {
    return with(Optional.of(canopy), shipped(bayByModule), bayByModule);
  }

  /** The rig with modules in bays. */
  Rig with(List<FitOutModule> modules, Map<String, String> bayByModule) {
    return with(Optional.of(canopy), modules, bayByModule);
  }

  /** The rig without its canopy, with modules of the shipped catalogue in bays. */
  Rig withoutCanopy(Map<String, String> bayByModule) {
    return with(Optional.empty(), shipped(bayByModule), bayByModule);
  }

  private static List<FitOutModule> shipped(Map<String, String> bayByModule) {
    List<FitOutModule> modules = new ArrayList<>();
    for (FitOutModule module : ShippedCatalogue.read().modules()) {
      if (bayByModule.containsKey(module.id())) {
        modules.add(module);
      }
    }
    return modules;
  }

  private Rig with(
      Optional<Canopy> box, List<FitOutModule> modules, Map<String, String> bayByModule) {
    List<ModuleChoice> choices = new ArrayList<>();
    for (FitOutModule module : modules) {
      choices.add(
          new ModuleChoice(
              module, List.of(bayByModule.get(module.id())), Need.MUST, /* value= */ 1));
    }
    Scenario scenario =
        new Scenario(
            "rig",
            "Rig",
            "Invented for a test",
            Settings.DEFAULTS,
            ute,
            Optional.of(tray),
            box,
            /* accessories= */ List.of(),
            /* uteBays= */ List.of(),
            /* trayBays= */ List.of(),
            /* canopyBays= */ List.of(),
            /* uteSpaces= */ List.of(),
            /* traySpaces= */ List.of(),
            /* canopySpaces= */ List.of(),
            choices,
            /* items= */ List.of(),
            /* trailers= */ List.of(),
            new Trip(List.of(), List.of(), new Consumption(0, 1000, 1000, 0, 0, 0), List.of()));
    return Rig.of(scenario, bayByModule);
  }
}
