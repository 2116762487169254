package kitstow.planner.exact;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Published optima hold the two proofs of an assignment. */
class ExactAssignmentTest {
  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3, 4})
  void completeSearchFindsThePublishedOptimum(int problem) {
    assertThat(Gap1.most(problem, ExactAssignment::solve)).isEqualTo(Gap1.OPTIMA.get(problem));
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3, 4})
  void cpSatFindsThePublishedOptimum(int problem) {
    CpSat.assumed();

    assertThat(Gap1.most(problem, CpSatAssignment::solve)).isEqualTo(Gap1.OPTIMA.get(problem));
  }

  @Test
  void amongEqualValuesTheCheapestIsTaken() {
    assertThatTheCheapestIsTaken(ExactAssignment::solve);
  }

  @Test
  void cpSatTakesTheCheapestToo() {
    CpSat.assumed();

    assertThatTheCheapestIsTaken(CpSatAssignment::solve);
  }

  private static void assertThatTheCheapestIsTaken(Gap1.Solver solver) {
    long[][] value = {{5, 5}, {5, 5}};
    long[][] mass = {{3, 3}, {2, 2}};
    long[][] cost = {{0, 30}, {0, 20}};

    ExactAssignment.Optimum optimum = solver.solve(value, mass, cost, new long[] {3L, 3L});

    assertThat(optimum.value()).isEqualTo(10L);
    assertThat(optimum.cost()).isEqualTo(20L);
    assertThat(optimum.agentOf()).containsExactly(0, 1);
  }
}
