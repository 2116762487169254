package kitstow.planner.solver;

import java.util.Map;
import java.util.Random;
import java.util.function.BooleanSupplier;
import org.optaplanner.core.api.score.buildin.bendablelong.BendableLongScore;

/**
 * Packs anew with a free module in another bay, or left out, for as long as that is better. Where a
 * module goes, whole spaces come and go; what stood in them would be home after a single move of
 * the search, and so none such is ever taken, however much more there is room for.
 */
final class BayTrials {
  /** Packings tried at most. */
  private static final int MOST = 30;

  private BayTrials() {}

  /**
   * The best of such packings, or the given plan if none is better.
   *
   * @param stopped whether to end with what there is
   */
  static PlanningLoad best(PlanningLoad first, Random random, BooleanSupplier stopped) {
    PackingProblem problem = first.problem();
    Map<String, String> bays = PackingScore.baysOf(first);
    BendableLongScore score = problem.packingOf(first).score(Aim.ALL);
    Packing best = null;
    int tried = 0;
    boolean better = !PackingProblem.openModules(problem.scenario()).isEmpty();
    while (better) {
      better = false;
      for (Map<String, String> choice : problem.bayChoices(bays)) {
        if (tried == MOST || stopped.getAsBoolean()) {
          break;
        }
        tried++;
        Packing packing = new Packing(problem, choice);
        new Construction(problem).packAll(packing, random, /* noise= */ 0.0);
        BendableLongScore its = packing.score(Aim.ALL);
        if (its.compareTo(score) > 0) {
          best = packing;
          score = its;
          bays = choice;
          better = true;
        }
      }
    }
    return best == null ? first : PlanningMapper.toPlanning(problem, best);
  }
}
