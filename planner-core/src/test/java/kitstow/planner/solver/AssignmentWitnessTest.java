package kitstow.planner.solver;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The search against proved optima; the bench has ten times as many. */
class AssignmentWitnessTest {
  private static final int CASES = 20;

  @Test
  void theSearchFindsTheProvedOptimum() {
    List<AssignmentWitness.Case> cases = AssignmentWitness.solve(CASES);

    assertThat(cases).noneMatch(AssignmentWitness.Case::betterThanTheOptimum);
    assertThat(cases.stream().filter(AssignmentWitness.Case::optimal).count())
        .as("%s", cases)
        .isGreaterThanOrEqualTo(CASES * 95 / 100);
  }

  @Test
  void bothProofsFindTheSameOptimum() {
    AssignmentWitness.assertBothProofsAgree(CASES);
  }
}
