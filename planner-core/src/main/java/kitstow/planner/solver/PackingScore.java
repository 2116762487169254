package kitstow.planner.solver;

import java.util.LinkedHashMap;
import java.util.Map;
import kitstow.planner.model.ModuleChoice;
import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.score.buildin.bendablelong.BendableLongScore;
import org.optaplanner.core.api.score.calculator.IncrementalScoreCalculator;

/** Score of a load under search: decodes again only what a move has touched. Made by the solver. */
public final class PackingScore
    implements IncrementalScoreCalculator<PlanningLoad, BendableLongScore> {
  private @Nullable PlanningLoad load;
  private @Nullable Packing packing;
  private boolean baysChanged;

  /** For the solver. */
  public PackingScore() {}

  @Override
  public void resetWorkingSolution(PlanningLoad workingSolution) {
    load = workingSolution;
    packing = new Packing(workingSolution.problem(), baysOf(workingSolution));
    baysChanged = false;
    for (PlanningItem item : workingSolution.items()) {
      packing.assign(item.index(), item.space(), item.stance(), item.rank());
    }
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
  public void afterVariableChanged(Object entity, String variableName) {
    if (entity instanceof PlanningItem item && packing != null) {
      packing.assign(item.index(), item.space(), item.stance(), item.rank());
    } else {
      baysChanged = true;
    }
  }

  @Override
  public void beforeEntityRemoved(Object entity) {}

  @Override
  public void afterEntityRemoved(Object entity) {}

  @Override
  public BendableLongScore calculateScore() {
    PlanningLoad working = load;
    Packing current = packing;
    if (working == null || current == null) {
      throw new IllegalStateException("no working solution");
    }
    if (baysChanged) {
      current.moduleBays(baysOf(working));
      baysChanged = false;
    }
    return current
        .levels(working.problem().aim())
        .toScore(working.problem().scenario().settings().massLimits());
  }
}
