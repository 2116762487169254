package kitstow.planner.advice;

import static kitstow.planner.testkit.ItemBuilder.anItem;
import static kitstow.planner.testkit.ModuleBuilder.aDrawer;
import static kitstow.planner.testkit.ModuleBuilder.aSlide;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import kitstow.planner.geometry.Turn;
import kitstow.planner.model.FittedModule;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Need;
import kitstow.planner.model.Placement;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.SpacePointMm;
import kitstow.planner.testkit.RigBuilder;
import kitstow.planner.testkit.Rigs;
import org.junit.jupiter.api.Test;

/** What is offered to be changed can be carried out; all gear invented. */
class ChangesTest {
  private static final Scenario SCENARIO =
      RigBuilder.aDualCab()
          .module(aSlide("slide"), Need.MUST, Rigs.FRONT_BAY, Rigs.REAR_BAY, "drawer/deck")
          .module(aDrawer("drawer"), Need.MUST, Rigs.REAR_BAY, Rigs.FRONT_BAY, "slide/deck")
          .items(anItem("case"))
          .scenario();

  private static List<String> baysFor(
      String moduleId, Map<String, String> moduleBays, Placement... placements) {
    Loading loading =
        Loading.of(
            SCENARIO, new LoadPlan("test", moduleBays, List.of(placements), LoadPlan.Origin.HAND));
    FittedModule module = loading.rig().modules().get(moduleId);
    return new Changes(loading)
        .movesOf(module).stream().map(change -> change.last().to()).collect(Collectors.toList());
  }

  @Test
  void aModuleIsNotMovedIntoABayThatIsTaken() {
    Map<String, String> both = Map.of("slide", Rigs.FRONT_BAY, "drawer", Rigs.REAR_BAY);

    assertThat(baysFor("slide", both)).containsExactly("drawer/deck");
    assertThat(baysFor("drawer", both)).isEmpty();
  }

  @Test
  void aModuleIsNotMovedOntoOneThatIsNotThereOrStandsOnIt() {
    assertThat(baysFor("slide", Map.of("slide", Rigs.FRONT_BAY))).containsExactly(Rigs.REAR_BAY);
    assertThat(baysFor("drawer", Map.of("drawer", Rigs.REAR_BAY, "slide", "drawer/deck")))
        .containsExactly(Rigs.FRONT_BAY);
  }

  @Test
  void aModuleIsNotMovedOntoTheFloorThatGearStandsOn() {
    Map<String, String> both = Map.of("slide", Rigs.FRONT_BAY, "drawer", Rigs.REAR_BAY);
    Placement onTheDeck =
        new Placement("case", 1, "drawer/deck", 0, Turn.LWH, new SpacePointMm(0, 0, 0));

    assertThat(baysFor("slide", both, onTheDeck)).isEmpty();
  }
}
