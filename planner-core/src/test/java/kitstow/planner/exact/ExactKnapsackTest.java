package kitstow.planner.exact;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Printed optima hold complete search and CP-SAT where several limits bind at once. */
class ExactKnapsackTest {
  static IntStream problems() {
    return IntStream.range(0, Mknap1.PROBLEMS);
  }

  @ParameterizedTest
  @MethodSource("problems")
  void completeSearchFindsThePrintedOptimum(int number) {
    Mknap1.Problem problem = Mknap1.problem(number);

    assertThat(ExactKnapsack.most(problem)).isEqualTo(problem.optimum());
  }

  @ParameterizedTest
  @MethodSource("problems")
  void cpSatFindsThePrintedOptimum(int number) {
    CpSat.assumed();
    Mknap1.Problem problem = Mknap1.problem(number);

    assertThat(CpSatKnapsack.most(problem)).isEqualTo(problem.optimum());
  }
}
