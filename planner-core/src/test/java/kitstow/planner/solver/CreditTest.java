package kitstow.planner.solver;

import static kitstow.planner.testkit.BayBuilder.aBay;
import static kitstow.planner.testkit.ItemBuilder.anItem;
import static kitstow.planner.testkit.ModuleBuilder.aDrawer;
import static kitstow.planner.testkit.SpaceBuilder.aSpace;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import kitstow.planner.LoadPlanner;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.Facing;
import kitstow.planner.model.Need;
import kitstow.planner.model.Pin;
import kitstow.planner.model.RuleKind;
import kitstow.planner.report.CheckReport;
import kitstow.planner.testkit.Masses;
import kitstow.planner.testkit.RigBuilder;
import kitstow.planner.testkit.Rigs;
import org.junit.jupiter.api.Test;

/** What one bay of a module is overloaded by without gear is no allowance for other limits. */
class CreditTest {
  @Test
  void anOverloadThatABetterBayAvoidsIsNotSpentElsewhere() {
    SizeMm cube = new SizeMm(800, 800, 800);
    RigBuilder rig =
        RigBuilder.aBareDualCab()
            .canopyBay(
                aBay("weak", 900, 50, 50, cube)
                    .facing(Facing.RIGHT, "right-door")
                    .ratings(Masses.always(Masses.kg(20))))
            .canopyBay(aBay("strong", 100, 50, 50, cube).facing(Facing.RIGHT, "right-door"))
            .canopySpace(aSpace(Rigs.BOX, 900, -850, 0, cube).ratings(Masses.always(Masses.kg(10))))
            // 50 kg on a bay for 20 kg, where it stands first.
            .module(aDrawer("drawer"), Need.MUST, "weak", "strong")
            .items(
                anItem("anvil")
                    .massG(Masses.kg(25))
                    .need(Need.MUST)
                    .pin(new Pin(Rigs.BOX, Optional.empty(), Optional.empty())));

    CheckReport report =
        LoadPlanner.plan(
            new PlanSearch.Request(rig.scenario(), 1L, 500L, 0.0, 1), best -> {}, () -> false);

    assertThat(report.brokenFindings()).noneMatch(f -> f.rule().kind() == RuleKind.LIMIT);
  }
}
