package kitstow.planner.solver;

import static kitstow.planner.testkit.ItemBuilder.anItem;
import static kitstow.planner.testkit.SpaceBuilder.aSpace;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.Item;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Pin;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.SpacePointMm;
import kitstow.planner.statics.Bound;
import kitstow.planner.testkit.Masses;
import kitstow.planner.testkit.RigBuilder;
import org.junit.jupiter.api.Test;

/** When a search ends before its time; rigs and gear are invented. */
class NearFloorTest {

  /** Chests of 300 mm in a space behind the axle that is so long. */
  private static Scenario chests(int count, int lengthMm) {
    RigBuilder rig =
        RigBuilder.aBareDualCab()
            .person("driver", Masses.kg(90), "driver")
            .roadDay(10.0)
            .canopySpace(aSpace("bin", 1250, -200, 0, new SizeMm(lengthMm, 400, 300)));
    for (int i = 0; i < count; i++) {
      rig.items(anItem("chest-" + i).size(300, 400, 300).massG(Masses.kg(40)).bearsG(0L));
    }
    return rig.scenario();
  }

  private static Packing packed(Scenario scenario) {
    PackingProblem problem = new PackingProblem(scenario);
    Packing packing = new Packing(problem, PackingProblem.firstBays(scenario));
    new Construction(problem).packAll(packing, new Random(0L), /* noise= */ 0.0);
    return packing;
  }

  @Test
  void aSearchEndsAtThePlanThatNoneCanBeMuchUnder() {
    Scenario scenario = chests(1, 500);
    long steps = 1_000_000L;

    PlanSearch.Best best =
        PlanSearch.solve(
            new PlanSearch.Request(scenario, 1L, steps, /* seconds= */ 0.0, /* threads= */ 1),
            found -> {},
            () -> false);

    assertThat(best.scoreCalculations()).isBetween(1L, steps / 100);
    Bound bound = Floor.of(Loading.of(scenario, best.plan()), Floor.USUAL_ITERATIONS);
    assertThat(best.momentNm()).isLessThanOrEqualTo(bound.floorNm() * (1.0 + NearFloor.ENOUGH));
    assertThat(new NearFloor(scenario).holds(packed(scenario))).isTrue();
  }

  @Test
  void itGoesOnWhileAnythingIsAtHome() {
    Scenario scenario = chests(2, 500);
    Packing packing = packed(scenario);

    assertThat(packing.placed()).hasSize(1);
    assertThat(new NearFloor(scenario).holds(packing)).isFalse();
  }

  @Test
  void itGoesOnWhileTheMomentMayBeMuchLess() {
    Scenario scenario = chests(1, 900);
    Packing packing = packed(scenario);
    assertThat(new NearFloor(scenario).holds(packing)).isTrue();

    Item chest = scenario.items().get(0);
    SpacePointMm farBack = new SpacePointMm(600, 0, 0);
    Pin pin = new Pin("bin", Optional.of(farBack), Optional.empty());
    Packing pinned = packed(scenario.withItems(List.of(chest.pinned(Optional.of(pin)))));

    // The floor does not know of exact pins, so a plan that keeps one may be far above it.
    assertThat(pinned.placed()).hasSize(1);
    assertThat(new NearFloor(scenario).holds(pinned)).isFalse();
  }
}
