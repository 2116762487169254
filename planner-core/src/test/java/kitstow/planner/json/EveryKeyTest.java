package kitstow.planner.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.Turn;
import kitstow.planner.model.Facing;
import kitstow.planner.model.FitOutModule;
import kitstow.planner.model.Item;
import kitstow.planner.model.KnownMass;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Loading;
import kitstow.planner.model.MassSource;
import kitstow.planner.model.PartState;
import kitstow.planner.model.Pin;
import kitstow.planner.model.Ratings;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.SpacePointMm;
import kitstow.planner.model.Stop;
import kitstow.planner.model.Tank;
import org.junit.jupiter.api.Test;

/** The valid files read, and what they say arrives in the records. */
class EveryKeyTest {
  private final Scenario scenario = TestFiles.scenario();

  @Test
  void scenarioReadsWithoutWarnings() {
    assertThat(
            TestFiles.problems(
                ScenarioReader.read(TestFiles.text("scenario.json"), TestFiles.catalogue())))
        .isEmpty();
  }

  @Test
  void planCanBeCarriedOut() {
    LoadPlan plan = TestFiles.value(PlanReader.read(TestFiles.text("plan.json"), scenario));
    assertThat(plan.moduleBays())
        .containsExactly(
            Map.entry("drawer-left", "floor-left"), Map.entry("shelf", "drawer-left/deck"));
    assertThat(plan.origin().momentStepDeciNm()).hasValue(5L);
    assertThat(Loading.of(scenario, plan).placed()).containsKeys("can#1", "can#2", "swag");
  }

  @Test
  void accessoryMovesFromItsCarrierToTheVehicleFrame() {
    BoxMm onCanopy = scenario.accessories().get(1).box();
    assertThat(onCanopy.minXMm()).isEqualTo(2500 + 10 + 100);
    assertThat(onCanopy.minZMm()).isEqualTo(930 + 900);
    BoxMm onTray = scenario.accessories().get(2).box();
    assertThat(onTray.minXMm()).isEqualTo(2500 + 5);
    assertThat(onTray.maxZMm()).isEqualTo(930 + 500);
  }

  @Test
  void toleranceOfACatalogueEntryFollowsTheSettingsUnlessItIsGiven() {
    assertThat(item("can").mass())
        .isEqualTo(new KnownMass(21_000L, MassSource.LABEL, 21_000L * 6 / 100));
    assertThat(item("fridge").mass().toleranceG()).isEqualTo(500L);
    assertThat(item("fuel-can").mass().toleranceG()).isEqualTo(19_500L * 6 / 100);
  }

  @Test
  void movingRatingOfACatalogueEntryFollowsTheSettingsUnlessItIsGiven() {
    Ratings slide = drawer().slide().orElseThrow().ratings();
    assertThat(slide).isEqualTo(new Ratings(120_000L, 100_000L, 60_000L, true));
    Ratings given = scenario.ute().spaces().get(0).ratings().orElseThrow();
    assertThat(given).isEqualTo(new Ratings(80_000L, 60_000L, 50_000L, false));
  }

  @Test
  void moduleAndItsTanksCarryTheIdOfTheScenario() {
    assertThat(drawer().id()).isEqualTo("drawer-left");
    assertThat(drawer().title()).isEqualTo("Left drawer");
    Tank tank = scenario.modules().get(1).module().tanks().get(0);
    assertThat(tank.id()).isEqualTo("shelf/tank");
    assertThat(tank.startMl()).isEqualTo(30_000L);
    assertThat(tank.empty().massG()).isEqualTo(4_500L);
  }

  @Test
  void valueFollowsNeedUnlessItIsGiven() {
    assertThat(scenario.modules().get(0).value()).isEqualTo(120);
    assertThat(scenario.modules().get(1).value()).isEqualTo(10);
    assertThat(item("wheel").value()).isEqualTo(100);
    assertThat(item("can").value()).isEqualTo(60);
  }

  @Test
  void partsHaveTheirState() {
    assertThat(scenario.ute().parts().get(0).state()).isEqualTo(PartState.OFF);
    assertThat(scenario.ute().parts().get(1).stowedAsItemId()).contains("wheel");
  }

  @Test
  void ownWeighingTakesThePlaceOfTheEntrysAxleLoads() {
    assertThat(scenario.ute().empty().front())
        .isEqualTo(new KnownMass(1_190_000L, MassSource.WEIGHED, 10_000L));
    assertThat(scenario.ute().empty().fuelMl()).isEqualTo(Map.of("main-tank", 60_000L));
  }

  @Test
  void pinKeepsSpaceCornerAndTurn() {
    assertThat(item("fridge").pin())
        .contains(
            new Pin("floor-left", Optional.of(new SpacePointMm(0, 100, 0)), Optional.of(Turn.WLH)));
  }

  @Test
  void supplyOrderKeepsItsGroups() {
    assertThat(scenario.trip().orders().get(1).groups())
        .isEqualTo(List.of(List.of("can#1", "can#2"), List.of("shelf/tank")));
  }

  @Test
  void stopKeepsWhatStaysShutThere() {
    assertThat(scenario.stops())
        .containsExactly(
            new Stop(
                "bogged",
                "bogged, with a bank on the left",
                Set.of(Facing.LEFT),
                /* shutBelowMm= */ 940,
                List.of("rear-door")));
  }

  private FitOutModule drawer() {
    return scenario.modules().get(0).module();
  }

  private Item item(String id) {
    return scenario.items().stream().filter(i -> i.id().equals(id)).findFirst().orElseThrow();
  }
}
