package kitstow.planner.solver;

import java.util.Map;
import java.util.Random;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.score.buildin.bendablelong.BendableLongScore;

/**
 * Packs anew with a free module in another bay, or left out, for as long as that is better, and
 * with other bays for all of them. Where a module goes, whole spaces come and go; what stood in
 * them would be home after a single move of the search, and so none such is ever taken, however
 * much more there is room for.
 */
final class BayTrials {
  /** Packings tried at most with one module elsewhere. */
  private static final int MOST = 20;

  /** Bays drawn for all free modules at once, after that. */
  private static final int DRAWN = 200;

  /** Packings tried at most with such bays; only those are that no module is in the way of. */
  private static final int MOST_DRAWN = 20;

  private final PackingProblem problem;
  private final Random random;
  private BendableLongScore score;
  private @Nullable Packing best;
  private Map<String, String> bays;

  private BayTrials(PlanningLoad first, Random random) {
    this.problem = first.problem();
    this.random = random;
    this.score = problem.packingOf(first).score(Aim.ALL);
    this.bays = PackingScore.baysOf(first);
  }

  /**
   * The best of such packings, or the given plan if none is better.
   *
   * @param stopped whether to end with what there is
   */
  static PlanningLoad best(PlanningLoad first, Random random, BooleanSupplier stopped) {
    if (PackingProblem.openModules(first.problem().scenario()).isEmpty()) {
      return first;
    }
    BayTrials trials = new BayTrials(first, random);
    trials.oneElsewhere(stopped);
    if (trials.score.hardScore(0) < 0L) {
      trials.allDrawn(stopped);
    }
    Packing best = trials.best;
    return best == null ? first : PlanningMapper.toPlanning(first.problem(), best);
  }

  private void oneElsewhere(BooleanSupplier stopped) {
    int tried = 0;
    boolean better = true;
    while (better) {
      better = false;
      for (Map<String, String> choice : problem.bayChoices(bays)) {
        if (tried == MOST || stopped.getAsBoolean()) {
          return;
        }
        tried++;
        better |= isBetter(choice);
      }
    }
  }

  /** Where modules are in each other's way as long as but one of them goes elsewhere. */
  private void allDrawn(BooleanSupplier stopped) {
    int tried = 0;
    for (int i = 0; i < DRAWN && tried < MOST_DRAWN && !stopped.getAsBoolean(); i++) {
      Map<String, String> choice = problem.anyBays(random);
      if (problem.rig(choice).view().conflicts() == 0L) {
        tried++;
        isBetter(choice);
      }
    }
  }

  /** Packs with these bays, and keeps to them if that is the best so far. */
  private boolean isBetter(Map<String, String> choice) {
    Packing packing = new Packing(problem, choice);
    new Construction(problem).packAll(packing, random, /* noise= */ 0.0);
    BendableLongScore its = packing.score(Aim.ALL);
    boolean better = its.compareTo(score) > 0;
    if (better) {
      best = packing;
      score = its;
      bays = choice;
    }
    return better;
  }
}
