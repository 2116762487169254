package kitstow.planner.solver;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.domain.solution.PlanningEntityCollectionProperty;
import org.optaplanner.core.api.domain.solution.PlanningScore;
import org.optaplanner.core.api.domain.solution.PlanningSolution;
import org.optaplanner.core.api.domain.solution.ProblemFactProperty;
import org.optaplanner.core.api.domain.valuerange.ValueRangeProvider;
import org.optaplanner.core.api.score.buildin.bendablelong.BendableLongScore;

/** The whole search space: gear, open modules, and what they may be given. */
@PlanningSolution
class PlanningLoad {
  /** Module conflicts. */
  static final int HARD_LEVELS = 1;

  /** Mass limits, must-take, value, moment, handling; the first two change places on request. */
  static final int SOFT_LEVELS = 5;

  @ProblemFactProperty private @Nullable PackingProblem problem;

  @PlanningEntityCollectionProperty private List<PlanningItem> items = new ArrayList<>();

  @PlanningEntityCollectionProperty private List<PlanningModule> modules = new ArrayList<>();

  @ValueRangeProvider(id = "spaces")
  private List<String> spaces = new ArrayList<>();

  @ValueRangeProvider(id = "stances")
  private List<Long> stances = new ArrayList<>();

  @ValueRangeProvider(id = "ranks")
  private List<Integer> ranks = new ArrayList<>();

  @PlanningScore(bendableHardLevelsSize = HARD_LEVELS, bendableSoftLevelsSize = SOFT_LEVELS)
  private @Nullable BendableLongScore score;

  /** For the solver's cloning. */
  PlanningLoad() {}

  PlanningLoad(
      PackingProblem problem,
      List<PlanningItem> items,
      List<PlanningModule> modules,
      List<String> spaces,
      int poses) {
    this.problem = problem;
    this.items.addAll(items);
    this.modules.addAll(modules);
    this.spaces.addAll(spaces);
    for (long i = Stance.ANY; i <= poses; i++) {
      this.stances.add(i);
      this.stances.add(i + Stance.STACKED);
    }
    for (int i = 0; i < Math.max(1, items.size()); i++) {
      this.ranks.add(i);
    }
  }

  PackingProblem problem() {
    PackingProblem p = problem;
    if (p == null) {
      throw new IllegalStateException("not yet cloned");
    }
    return p;
  }

  List<PlanningItem> items() {
    return items;
  }

  List<PlanningModule> modules() {
    return modules;
  }

  @Nullable BendableLongScore score() {
    return score;
  }

  void setScore(BendableLongScore value) {
    score = value;
  }
}
