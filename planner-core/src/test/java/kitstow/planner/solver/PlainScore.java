package kitstow.planner.solver;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import kitstow.planner.model.Item;
import kitstow.planner.model.LoadKind;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Need;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Scenario;
import kitstow.planner.packing.WayOut;
import kitstow.planner.rules.LimitRule;
import kitstow.planner.rules.PlanRule;
import kitstow.planner.rules.RuleBook;
import kitstow.planner.rules.Situation;
import kitstow.planner.statics.LoadLine;
import kitstow.planner.statics.OverhangMoment;
import org.optaplanner.core.api.score.buildin.bendablelong.BendableLongScore;
import org.optaplanner.core.api.score.calculator.EasyScoreCalculator;

/** The score from the whole plan, afresh each time, through loading, trip and rules. */
public final class PlainScore implements EasyScoreCalculator<PlanningLoad, BendableLongScore> {
  @Override
  public BendableLongScore calculateScore(PlanningLoad load) {
    PackingProblem problem = load.problem();
    Packing packing = new Packing(problem, PackingScore.baysOf(load));
    for (PlanningItem item : load.items()) {
      packing.assign(item.index(), item.space(), item.pose(), item.rank());
    }
    int refused = Bays.settle(problem.scenario(), PackingScore.baysOf(load)).refused();
    return levels(problem, packing.plan(LoadPlan.Origin.HAND), refused)
        .toScore(problem.scenario().settings().massLimits());
  }

  /**
   * The score of any plan, however it was made.
   *
   * @param problem what the plan is for, with the step in which moments are compared
   * @param refused modules that wanted a bay and did not get it
   */
  static ScoreLevels levels(PackingProblem problem, LoadPlan plan, int refused) {
    Loading loading = Loading.of(problem.scenario(), plan);
    Situation situation = Situation.of(loading);
    Set<String> fitted = loading.rig().modules().keySet();
    long must = ScoreLevels.mustModulesLeft(problem.scenario().modules(), fitted);
    long value = ScoreLevels.moduleValueLeft(problem.scenario().modules(), fitted);
    for (Item item : problem.scenario().items()) {
      for (int unit = 1; unit <= item.quantity(); unit++) {
        if (loading.home().contains(item.keyOf(unit))) {
          must += item.need() == Need.MUST ? 1L : 0L;
          value += item.need() == Need.MUST ? 0L : item.value();
        }
      }
    }
    return new ScoreLevels(
        refused + conflicts(situation),
        Math.max(0L, overG(situation) - problem.overWithoutGearG()),
        must,
        value,
        ScoreLevels.steps(worstMoment(situation), problem.stepNm()),
        handling(List.copyOf(loading.placed().values())));
  }

  /** Things to move before daily gear comes out; many times a day counts threefold. */
  private static long handling(List<PlacedItem> placed) {
    Map<String, List<PlacedItem>> bySpace = new HashMap<>();
    for (PlacedItem item : placed) {
      bySpace.computeIfAbsent(item.space().id(), id -> new ArrayList<>()).add(item);
    }
    long moves = 0L;
    for (PlacedItem item : placed) {
      long weight =
          switch (item.item().reach()) {
            case MANY_A_DAY -> 3L;
            case DAILY -> 1L;
            default -> 0L;
          };
      moves += weight * WayOut.toMoveFirst(item, bySpace.get(item.space().id())).size();
    }
    return moves;
  }

  private static long conflicts(Situation situation) {
    long conflicts = 0L;
    for (PlanRule rule : RuleBook.PLAN_RULES) {
      boolean counted = rule.card().id() != RuleId.MUST_TAKE && rule.card().id().binding();
      conflicts += counted ? rule.breaches(situation).size() : 0;
    }
    return conflicts;
  }

  private static long overG(Situation situation) {
    Map<String, Long> over = new HashMap<>();
    for (LoadState state : situation.judgedStates()) {
      if (state.kind() == LoadKind.CERTIFICATION) {
        continue;
      }
      for (LimitRule rule : RuleBook.LIMITS) {
        for (LoadLine line : rule.lines(situation.loading(), state)) {
          if (line.over(state)) {
            long grams = line.overG(state);
            over.merge(line.rule() + " " + line.subjectId(), grams, Math::max);
          }
        }
      }
    }
    return over.values().stream().mapToLong(Long::longValue).sum();
  }

  /** Worst moving moment of any plan. */
  static long worstMomentHalfGMm(Scenario scenario, LoadPlan plan) {
    return worstMoment(Situation.of(Loading.of(scenario, plan)));
  }

  private static long worstMoment(Situation situation) {
    long worst = 0L;
    for (LoadState state : situation.judgedStates()) {
      if (state.kind() == LoadKind.MOVING) {
        worst = Math.max(worst, OverhangMoment.of(situation.loading(), state).halfGMm());
      }
    }
    return worst;
  }
}
