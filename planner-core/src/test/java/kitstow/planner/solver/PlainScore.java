package kitstow.planner.solver;

import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
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
import kitstow.planner.statics.SideLoads;
import org.optaplanner.core.api.score.buildin.bendablelong.BendableLongScore;
import org.optaplanner.core.api.score.calculator.EasyScoreCalculator;

/** The score from the whole plan, afresh each time, through loading, trip and rules. */
public final class PlainScore implements EasyScoreCalculator<PlanningLoad, BendableLongScore> {
  @Override
  public BendableLongScore calculateScore(PlanningLoad load) {
    PackingProblem problem = load.problem();
    Packing packing = new Packing(problem, PackingScore.baysOf(load));
    for (PlanningItem item : load.items()) {
      packing.assign(item.index(), item.space(), item.stance(), item.rank());
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
        overG(situation, problem.unavoidable()),
        must,
        value,
        ScoreLevels.steps(worstMoment(situation), problem.stepNm()),
        handling(situation));
  }

  /** Reach, togetherness, balance and height, from the plan alone. */
  private static long handling(Situation situation) {
    Collection<PlacedItem> placed = situation.loading().placed().values();
    long moves = 0L;
    long massG = 0L;
    long heightHalfGMm = 0L;
    Map<String, Set<String>> spacesOfGroup = new HashMap<>();
    for (PlacedItem item : placed) {
      long weight =
          switch (item.item().reach()) {
            case MANY_A_DAY -> 3L;
            case DAILY -> 1L;
            default -> 0L;
          };
      moves += weight * WayOut.toMoveFirst(item, situation.loading().in(item.space().id())).size();
      massG += item.item().mass().massG();
      heightHalfGMm += item.item().mass().massG() * (item.box().minZMm() + item.box().maxZMm());
      item.item()
          .group()
          .ifPresent(
              group ->
                  spacesOfGroup
                      .computeIfAbsent(group, g -> new HashSet<>())
                      .add(item.space().id()));
    }
    long spread = spacesOfGroup.values().stream().mapToLong(spaces -> spaces.size() - 1L).sum();
    double limitKg = situation.settings().leftRightLimitG() / 1000.0;
    double sideKg = 0.0;
    for (LoadState state : situation.judgedStates()) {
      if (state.kind() == LoadKind.MOVING) {
        double difference = SideLoads.of(situation.loading(), state).differenceKg();
        sideKg = Math.max(sideKg, Math.abs(difference) - limitKg);
      }
    }
    return Handling.MOVE * moves
        + Handling.SPREAD * spread
        + Handling.SIDE_KG * (long) Math.floor(sideKg + 1.0e-9)
        + Handling.HEIGHT_MM * (massG == 0L ? 0L : heightHalfGMm / (2L * massG));
  }

  private static long conflicts(Situation situation) {
    long conflicts = 0L;
    for (PlanRule rule : RuleBook.PLAN_RULES) {
      boolean counted = rule.card().id() != RuleId.MUST_TAKE && rule.card().id().binding();
      conflicts += counted ? rule.breaches(situation).size() : 0;
    }
    return conflicts;
  }

  private static long overG(Situation situation, Map<String, Long> unavoidable) {
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
    return over.entrySet().stream()
        .mapToLong(one -> Math.max(0L, one.getValue() - unavoidable.getOrDefault(one.getKey(), 0L)))
        .sum();
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
