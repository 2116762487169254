package kitstow.planner.solver;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import kitstow.planner.exact.BoxCases;

/** What became of many cases. */
record BoxSummary(List<BoxWitness.Case> cases) {
  private static final int LEAST_OPTIMAL_PERCENT = 95;
  private static final double MOST_MEAN_GAP = 0.01;

  /** Copies its cases. */
  BoxSummary {
    cases = List.copyOf(cases);
  }

  /** Packs the cases with the first numbers. */
  static BoxSummary of(int count, IntFunction<BoxCases.Proved> cases, long steps) {
    return new BoxSummary(
        IntStream.range(0, count)
            .mapToObj(cases)
            .map(one -> BoxWitness.solve(one, steps))
            .toList());
  }

  /**
   * No plan is better than the optimum, no floor is above it, and of a hundred plans 95 or more are
   * within 0.1 % of it; the mean of how far those with everything aboard are above it is 1 % or
   * less.
   */
  void assertAsGoodAsProved() {
    assertThat(cases).noneMatch(BoxWitness.Case::betterThanTheOptimum);
    assertThat(cases).noneMatch(BoxWitness.Case::floorAboveTheOptimum);
    assertThat(meanGap()).as("%s", this).isLessThanOrEqualTo(MOST_MEAN_GAP);
    assertThat(optimal())
        .as("%s", this)
        .isGreaterThanOrEqualTo(cases.size() * LEAST_OPTIMAL_PERCENT / 100);
  }

  /** Mean of the floors as shares of the optima. */
  double meanFloorShare() {
    return cases.stream().mapToDouble(BoxWitness.Case::floorShare).average().orElseThrow();
  }

  private long optimal() {
    return cases.stream().filter(BoxWitness.Case::optimal).count();
  }

  private double meanGap() {
    return whole().stream().mapToDouble(BoxWitness.Case::gap).average().orElse(Double.NaN);
  }

  private List<BoxWitness.Case> whole() {
    return cases.stream().filter(one -> one.home() == 0).toList();
  }

  @Override
  public String toString() {
    List<BoxWitness.Case> missed = cases.stream().filter(one -> !one.optimal()).toList();
    return String.format(
        Locale.ROOT,
        "%d of %d proved optima found, %d with something home; above the optimum: mean %.3f %%,"
            + " worst %.2f %%; floor at %.2f of the optimum on average; missed: %s",
        optimal(),
        cases.size(),
        cases.size() - whole().size(),
        100.0 * meanGap(),
        100.0 * whole().stream().mapToDouble(BoxWitness.Case::gap).max().orElse(Double.NaN),
        meanFloorShare(),
        missed.stream()
            .map(one -> String.format(Locale.ROOT, "%d by %.2f %%", one.number(), 100 * one.gap()))
            .toList());
  }
}
