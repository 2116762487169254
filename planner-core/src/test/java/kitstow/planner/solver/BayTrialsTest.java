package kitstow.planner.solver;

import static kitstow.planner.testkit.BayBuilder.aBay;
import static kitstow.planner.testkit.ItemBuilder.anItem;
import static kitstow.planner.testkit.ModuleBuilder.aSlide;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.Facing;
import kitstow.planner.model.Need;
import kitstow.planner.testkit.RigBuilder;
import org.junit.jupiter.api.Test;

/** Modules that need not come make way for gear that is worth more. Rig and gear are invented. */
class BayTrialsTest {
  private static final String FLOOR = "floor";

  /** Eight go on the bare floor of 800 mm each way, two on the slide that may stand there. */
  private static PlanningLoad constructed(Need ofSlide, int crates) {
    RigBuilder rig =
        RigBuilder.aBareDualCab()
            .canopyBay(
                aBay(FLOOR, 100, 50, 50, new SizeMm(800, 800, 800))
                    .facing(Facing.RIGHT, "right-door")
                    .spaceWhenEmpty())
            .module(aSlide("slide"), ofSlide, FLOOR)
            .items(
                anItem("crate")
                    .size(390, 390, 340)
                    .massG(5_000L)
                    .bearsG(50_000L)
                    .need(Need.SHOULD)
                    .value(50)
                    .quantity(crates));
    return PlanSearch.construct(new PackingProblem(rig.scenario()), null);
  }

  private static Packing best(PlanningLoad first) {
    PlanningLoad best = BayTrials.best(first, new Random(1L), () -> false);
    return best.problem().packingOf(best);
  }

  @Test
  void aModuleIsLeftOutForGearThatIsWorthMore() {
    PlanningLoad first = constructed(Need.NICE, /* crates= */ 8);
    assertThat(first.problem().packingOf(first).placed()).as("on the slide").hasSizeLessThan(8);

    Packing best = best(first);

    assertThat(best.placed()).hasSize(8);
    assertThat(best.wantedBays()).isEmpty();
  }

  @Test
  void aModuleStaysWhereAllGoesInWithIt() {
    assertThat(best(constructed(Need.NICE, /* crates= */ 1)).wantedBays()).containsKey("slide");
  }

  @Test
  void aModuleThatMustComeStays() {
    assertThat(best(constructed(Need.MUST, /* crates= */ 8)).wantedBays()).containsKey("slide");
  }

  @Test
  void nothingIsTriedOnceTheSearchIsStopped() {
    PlanningLoad first = constructed(Need.NICE, /* crates= */ 8);

    assertThat(BayTrials.best(first, new Random(1L), () -> true)).isSameAs(first);
  }
}
