package kitstow.planner.exact;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/**
 * The first two of the generalised assignment problems gap1 with their optima: OR-Library, J. E.
 * Beasley, "OR-Library: distributing test problems by electronic mail", Journal of the Operational
 * Research Society 41 (1990) 1069-1072. Five agents by row, fifteen jobs by column; every job is
 * assigned.
 */
class ExactAssignmentTest {
  /** More than all values together, so that no job is left for the sake of others. */
  private static final long FOR_BEING_ASSIGNED = 1000L;

  private static final long[][] FIRST_VALUE = {
    {17, 21, 22, 18, 24, 15, 20, 18, 19, 18, 16, 22, 24, 24, 16},
    {23, 16, 21, 16, 17, 16, 19, 25, 18, 21, 17, 15, 25, 17, 24},
    {16, 20, 16, 25, 24, 16, 17, 19, 19, 18, 20, 16, 17, 21, 24},
    {19, 19, 22, 22, 20, 16, 19, 17, 21, 19, 25, 23, 25, 25, 25},
    {18, 19, 15, 15, 21, 25, 16, 16, 23, 15, 22, 17, 19, 22, 24}
  };
  private static final long[][] FIRST_MASS = {
    {8, 15, 14, 23, 8, 16, 8, 25, 9, 17, 25, 15, 10, 8, 24},
    {15, 7, 23, 22, 11, 11, 12, 10, 17, 16, 7, 16, 10, 18, 22},
    {21, 20, 6, 22, 24, 10, 24, 9, 21, 14, 11, 14, 11, 19, 16},
    {20, 11, 8, 14, 9, 5, 6, 19, 19, 7, 6, 6, 13, 9, 18},
    {8, 13, 13, 13, 10, 20, 25, 16, 16, 17, 10, 10, 5, 12, 23}
  };
  private static final long[] FIRST_CAPACITY = {36, 34, 38, 27, 33};

  private static final long[][] SECOND_VALUE = {
    {19, 23, 24, 20, 20, 25, 16, 21, 24, 15, 17, 17, 20, 20, 20},
    {25, 24, 16, 21, 19, 17, 17, 19, 23, 21, 21, 23, 20, 15, 16},
    {16, 21, 25, 22, 24, 24, 16, 17, 15, 18, 15, 17, 18, 24, 18},
    {25, 24, 18, 19, 15, 18, 20, 22, 23, 18, 16, 19, 17, 15, 22},
    {25, 19, 21, 22, 20, 15, 20, 19, 18, 18, 17, 23, 17, 25, 25}
  };
  private static final long[][] SECOND_MASS = {
    {16, 12, 8, 20, 18, 10, 12, 8, 14, 23, 19, 14, 15, 15, 24},
    {16, 18, 19, 22, 13, 20, 9, 7, 25, 10, 20, 13, 11, 15, 16},
    {6, 20, 20, 5, 14, 12, 6, 15, 22, 18, 13, 23, 23, 18, 25},
    {18, 23, 25, 17, 25, 13, 23, 23, 13, 20, 20, 23, 17, 19, 24},
    {12, 17, 15, 25, 22, 5, 24, 19, 12, 25, 23, 21, 23, 19, 18}
  };
  private static final long[] SECOND_CAPACITY = {36, 37, 38, 48, 44};

  @Test
  void publishedOptimaAreFound() {
    assertThat(best(FIRST_VALUE, FIRST_MASS, FIRST_CAPACITY)).isEqualTo(336L);
    assertThat(best(SECOND_VALUE, SECOND_MASS, SECOND_CAPACITY)).isEqualTo(327L);
  }

  @Test
  void amongEqualValuesTheCheapestIsTaken() {
    long[][] value = {{5, 5}, {5, 5}};
    long[][] mass = {{3, 3}, {2, 2}};
    long[][] cost = {{0, 30}, {0, 20}};

    ExactAssignment.Optimum optimum = ExactAssignment.solve(value, mass, cost, new long[] {3L, 3L});

    assertThat(optimum.value()).isEqualTo(10L);
    assertThat(optimum.cost()).isEqualTo(20L);
    assertThat(optimum.agentOf()).containsExactly(0, 1);
  }

  private static long best(long[][] valueByAgent, long[][] massByAgent, long[] capacity) {
    int agents = capacity.length;
    int jobs = valueByAgent[0].length;
    long[][] value = new long[jobs][agents];
    long[][] mass = new long[jobs][agents];
    for (int job = 0; job < jobs; job++) {
      for (int agent = 0; agent < agents; agent++) {
        value[job][agent] = valueByAgent[agent][job] + FOR_BEING_ASSIGNED;
        mass[job][agent] = massByAgent[agent][job];
      }
    }
    ExactAssignment.Optimum optimum =
        ExactAssignment.solve(value, mass, new long[jobs][agents], capacity);
    return optimum.value() - FOR_BEING_ASSIGNED * jobs;
  }
}
