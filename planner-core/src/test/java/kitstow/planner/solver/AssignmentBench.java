package kitstow.planner.solver;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The search against two hundred proved optima. */
@Tag("exact")
class AssignmentBench {
  private static final int CASES = 200;

  @Test
  void theSearchFindsTheProvedOptimum() {
    List<AssignmentWitness.Case> cases = AssignmentWitness.solve(CASES);

    long optimal = cases.stream().filter(AssignmentWitness.Case::optimal).count();
    double worst = cases.stream().mapToDouble(AssignmentWitness.Case::momentGap).max().orElse(0.0);
    double mean = cases.stream().mapToDouble(AssignmentWitness.Case::momentGap).average().orElse(0);
    long lessValue = cases.stream().filter(one -> one.value() < one.bestValue()).count();
    System.out.printf(
        Locale.ROOT,
        "%d of %d proved optima found; %d short of value; moment above the optimum: mean %.2f %%,"
            + " worst %.2f %%%n",
        optimal,
        cases.size(),
        lessValue,
        100.0 * mean,
        100.0 * worst);
    assertThat(cases).noneMatch(AssignmentWitness.Case::betterThanTheOptimum);
    assertThat(optimal).isGreaterThanOrEqualTo(CASES * 95 / 100);
  }

  @Test
  void bothProofsFindTheSameOptimum() {
    AssignmentWitness.assertBothProofsAgree(CASES);
  }
}
