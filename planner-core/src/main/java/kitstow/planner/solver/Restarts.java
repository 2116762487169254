package kitstow.planner.solver;

import java.util.Random;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.score.buildin.bendablelong.BendableLongScore;
import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.phase.custom.CustomPhaseCommand;

/**
 * Packs a few times over in orders that stray at random from the trade's own, and goes on with the
 * best: a first phase of the search. A start that is already better stays.
 */
final class Restarts implements CustomPhaseCommand<PlanningLoad> {
  /** How far the order strays in the wildest of them. */
  private static final double MOST_NOISE = 1.5;

  /** One in so many fills gap by gap instead of packing unit by unit. */
  private static final int FILLED = 6;

  private final long seed;
  private final int count;
  private final BooleanSupplier stopped;

  /**
   * Restarts of one search.
   *
   * @param seed seed of the search
   * @param count packings tried
   * @param stopped whether to end with what there is
   */
  Restarts(long seed, int count, BooleanSupplier stopped) {
    this.seed = seed;
    this.count = count;
    this.stopped = stopped;
  }

  @Override
  public void changeWorkingSolution(ScoreDirector<PlanningLoad> director) {
    PlanningLoad load = director.getWorkingSolution();
    PackingProblem problem = load.problem();
    BendableLongScore bestScore = problem.packingOf(load).score(Aim.ALL);
    Packing best = null;
    Random random = new Random(seed);
    for (int i = 0; i < count && !stopped.getAsBoolean(); i++) {
      Packing packing = new Packing(problem, PackingScore.baysOf(load));
      double noise = MOST_NOISE * (i + 1) / count;
      if (problem.fillsSpaces() && i % FILLED == FILLED - 1) {
        new Construction(problem).fillAll(packing, random, noise);
      } else {
        new Construction(problem).packAll(packing, random, noise);
      }
      BendableLongScore score = packing.score(Aim.ALL);
      if (score.compareTo(bestScore) > 0) {
        best = packing;
        bestScore = score;
      }
    }
    takeOver(director, best);
  }

  private static void takeOver(ScoreDirector<PlanningLoad> director, @Nullable Packing best) {
    if (best == null) {
      return;
    }
    for (PlanningItem item : director.getWorkingSolution().items()) {
      int unit = item.index();
      director.beforeVariableChanged(item, "space");
      item.setSpace(best.spaceOf(unit));
      director.afterVariableChanged(item, "space");
      director.beforeVariableChanged(item, "stance");
      item.setStance(best.stanceOf(unit));
      director.afterVariableChanged(item, "stance");
      director.beforeVariableChanged(item, "rank");
      item.setRank(best.rankOf(unit));
      director.afterVariableChanged(item, "rank");
    }
    director.triggerVariableListeners();
  }
}
