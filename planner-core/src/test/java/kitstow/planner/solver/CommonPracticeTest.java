package kitstow.planner.solver;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import kitstow.planner.LoadPlanner;
import kitstow.planner.model.Facing;
import kitstow.planner.model.FittedModule;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Scenario;
import kitstow.planner.report.CheckReport;
import kitstow.planner.scenarios.ShippedFiles;
import org.junit.jupiter.api.Test;

/**
 * A canopy of 1000 mm takes an upright fridge of 85 L and a pantry on one side, and a single drawer
 * with a shelf under the roof on the other (common practice, no source). Every module may stand in
 * every bay, and each lists first a bay in which it does not fit or is in the way.
 */
class CommonPracticeTest {
  private static final String BAYS =
      "\"left-fore\", \"left-mid\", \"right-shelf\", \"right-roof-shelf\", \"right-fore\"";

  private static final String SCENARIO =
      """
      {
        "schemaVersion": 1,
        "kind": "scenario",
        "id": "canopy-of-1000",
        "title": "A canopy of 1000 with every bay open",
        "note": "Invented.",
        "ute": {"entry": "mid-dual-cab-chassis"},
        "tray": {"entry": "tray-1800-aluminium", "frontXMm": 2890, "deckZMm": 930},
        "canopy": {"entry": "canopy-1000", "fromTrayFrontMm": 800},
        "modules": [
          {"id": "drawer", "entry": "side-drawer", "bays": [BAYS], "need": "must"},
          {"id": "shelf", "entry": "roof-shelf-940", "bays": ["right-mid", BAYS], "need": "must"},
          {"id": "fridge-bay", "entry": "upright-fridge-bay", "bays": ["right-mid", BAYS],
           "need": "must"},
          {"id": "pantry", "entry": "pantry-tower", "bays": ["right-mid", BAYS], "need": "must"}
        ],
        "gear": [
          {"id": "fridge", "entry": "upright-fridge-85"},
          {"entry": "spice-caddy"},
          {"entry": "tool-roll"},
          {"entry": "camp-lights"}
        ],
        "trip": {
          "people": [
            {"id": "driver", "title": "Driver", "massKg": 90, "massSource": "estimate",
             "seat": "driver"}
          ],
          "consumption": {"fuelLPer100Km": 12, "offRoadFuelRatio": 1.4, "towingFuelRatio": 1.3,
            "waterLPerPersonDay": 0, "foodKgPerPersonDay": 0, "gasKgPerDay": 0},
          "supplies": [{"kind": "fuel", "order": [["main-tank"]]}],
          "legs": [
            {"id": "out", "title": "Out", "distanceKm": 100, "days": 1, "surface": "road"}
          ]
        }
      }
      """
          .replace("BAYS", BAYS);

  @Test
  void fridgeAndPantryStandOnOneSideDrawerAndShelfOnTheOther() {
    Scenario scenario = ShippedFiles.read("canopy-of-1000", SCENARIO);
    PlanSearch.Request request = new PlanSearch.Request(scenario, 1L, 3_000L, 0.0, 1);

    CheckReport report = LoadPlanner.plan(request, best -> {}, () -> false);

    LoadPlan plan = report.situation().loading().plan();
    assertThat(report.brokenFindings()).isEmpty();
    assertThat(plan.moduleBays()).containsOnlyKeys("drawer", "shelf", "fridge-bay", "pantry");
    assertThat(sideOf(report, "fridge-bay")).isEqualTo(sideOf(report, "pantry"));
    assertThat(sideOf(report, "drawer")).isEqualTo(sideOf(report, "shelf"));
    assertThat(sideOf(report, "drawer")).isNotEqualTo(sideOf(report, "pantry"));
    assertThat(plan.placements())
        .anyMatch(placement -> placement.spaceId().equals("fridge-bay/fridge"));
  }

  private static Facing sideOf(CheckReport report, String module) {
    Loading loading = report.situation().loading();
    Map<String, FittedModule> modules = loading.rig().modules();
    return modules.get(module).bay().facing();
  }
}
