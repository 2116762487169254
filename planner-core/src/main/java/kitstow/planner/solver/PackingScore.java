package kitstow.planner.solver;

import java.util.LinkedHashMap;
import java.util.Map;
import kitstow.planner.model.ModuleChoice;
import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.score.buildin.bendablelong.BendableLongScore;
import org.optaplanner.core.api.score.calculator.IncrementalScoreCalculator;

/**
 * Score of a load under search. It follows the packing that moves are made with, so only what has
 * changed since is worked out: nothing where the move itself has just packed it. Made by the
 * solver.
 */
public final class PackingScore
    implements IncrementalScoreCalculator<PlanningLoad, BendableLongScore> {
  private @Nullable PlanningLoad load;

  /** For the solver. */
  public PackingScore() {}

  @Override
  public void resetWorkingSolution(PlanningLoad workingSolution) {
    load = workingSolution;
  }

  /** Bays of all modules: the fixed ones and those the search has chosen. */
  static Map<String, String> baysOf(PlanningLoad load) {
    Map<String, String> chosen = new LinkedHashMap<>();
    for (PlanningModule module : load.modules()) {
      chosen.put(module.id(), module.bay());
    }
    Map<String, String> bays = new LinkedHashMap<>();
    for (ModuleChoice choice : load.problem().scenario().modules()) {
      String id = choice.module().id();
      String bay = chosen.getOrDefault(id, choice.bayIds().get(0));
      if (!bay.equals(PlanningModule.NO_BAY)) {
        bays.put(id, bay);
      }
    }
    return bays;
  }

  @Override
  public void beforeEntityAdded(Object entity) {}

  @Override
  public void afterEntityAdded(Object entity) {}

  @Override
  public void beforeVariableChanged(Object entity, String variableName) {}

  @Override
  public void afterVariableChanged(Object entity, String variableName) {}

  @Override
  public void beforeEntityRemoved(Object entity) {}

  @Override
  public void afterEntityRemoved(Object entity) {}

  @Override
  public BendableLongScore calculateScore() {
    PlanningLoad working = load;
    if (working == null) {
      throw new IllegalStateException("no working solution");
    }
    PackingProblem problem = working.problem();
    return problem.packingOf(working).score(problem.aim());
  }
}
