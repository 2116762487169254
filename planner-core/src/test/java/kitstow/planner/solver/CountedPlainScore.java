package kitstow.planner.solver;

import org.optaplanner.core.api.score.buildin.bendablelong.BendableLongScore;
import org.optaplanner.core.api.score.calculator.EasyScoreCalculator;

/** The plain score, with a count of how often a search of this thread was held against it. */
public final class CountedPlainScore
    implements EasyScoreCalculator<PlanningLoad, BendableLongScore> {
  private static final ThreadLocal<long[]> COUNT = ThreadLocal.withInitial(() -> new long[1]);

  private final PlainScore plain = new PlainScore();

  @Override
  public BendableLongScore calculateScore(PlanningLoad load) {
    COUNT.get()[0]++;
    return plain.calculateScore(load);
  }

  static long count() {
    return COUNT.get()[0];
  }
}
