package kitstow.planner.solver;

import static kitstow.planner.testkit.ItemBuilder.anItem;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import kitstow.planner.LoadPlanner;
import kitstow.planner.geometry.Turn;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Pin;
import kitstow.planner.model.SpacePointMm;
import kitstow.planner.report.CheckReport;
import kitstow.planner.testkit.RigBuilder;
import kitstow.planner.testkit.Rigs;
import org.junit.jupiter.api.Test;

/** An item pinned to an exact place stands there, though it might stand further forward. */
class ExactPinTest {
  @Test
  void anItemIsNotPushedForwardFromTheCornerItIsPinnedTo() {
    SpacePointMm corner = new SpacePointMm(20, 0, 0);
    RigBuilder rig =
        RigBuilder.aDualCab()
            .items(
                anItem("case").pin(new Pin(Rigs.BOX, Optional.of(corner), Optional.of(Turn.LWH))));

    CheckReport report =
        LoadPlanner.plan(
            new PlanSearch.Request(rig.scenario(), 1L, 50L, 0.0, 1), best -> {}, () -> false);

    LoadPlan plan = report.situation().loading().plan();
    assertThat(plan.placements()).singleElement().extracting("corner").isEqualTo(corner);
  }
}
