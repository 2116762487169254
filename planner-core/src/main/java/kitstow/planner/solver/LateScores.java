package kitstow.planner.solver;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.score.buildin.bendablelong.BendableLongScore;
import org.optaplanner.core.impl.localsearch.scope.LocalSearchPhaseScope;
import org.optaplanner.core.impl.localsearch.scope.LocalSearchStepScope;
import org.optaplanner.core.impl.phase.event.PhaseLifecycleListenerAdapter;
import org.optaplanner.core.impl.phase.scope.AbstractPhaseScope;
import org.optaplanner.core.impl.phase.scope.AbstractStepScope;

/**
 * What the score of a move must reach to be taken, kept beside the solver's own late acceptance (E.
 * K. Burke, Y. Bykov, "The late acceptance hill-climbing heuristic", 2017, from memory): that of
 * the last step, or of the one so many steps back. With it a packing is given up as soon as it
 * cannot come to that any more. Counts the steps as well.
 */
final class LateScores extends PhaseLifecycleListenerAdapter<PlanningLoad> {
  private final int lateness;
  private @Nullable BendableLongScore[] scores = {};
  private @Nullable BendableLongScore last;
  private int next;
  private long steps;

  /**
   * Nothing known yet.
   *
   * @param lateness steps back
   */
  LateScores(int lateness) {
    this.lateness = lateness;
  }

  @Override
  public void phaseStarted(AbstractPhaseScope<PlanningLoad> phaseScope) {
    if (phaseScope instanceof LocalSearchPhaseScope) {
      start(phaseScope.<BendableLongScore>getBestScore());
    }
  }

  @Override
  public void stepEnded(AbstractStepScope<PlanningLoad> stepScope) {
    if (stepScope instanceof LocalSearchStepScope) {
      took((BendableLongScore) stepScope.getScore());
    }
  }

  /** A search begins at this score. */
  void start(BendableLongScore score) {
    scores = new BendableLongScore[lateness];
    Arrays.fill(scores, score);
    last = score;
    next = 0;
  }

  /** A move of this score was taken. */
  void took(BendableLongScore score) {
    scores[next] = score;
    last = score;
    next = (next + 1) % lateness;
    steps++;
  }

  /** Steps of local search so far. */
  long steps() {
    return steps;
  }

  /** Whether a move of this score, or of any lower one, is surely not taken. */
  boolean refuses(BendableLongScore score) {
    BendableLongScore late = scores.length == 0 ? null : scores[next];
    BendableLongScore now = last;
    return late != null && now != null && score.compareTo(late) < 0 && score.compareTo(now) < 0;
  }
}
