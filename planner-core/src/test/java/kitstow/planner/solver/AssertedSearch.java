package kitstow.planner.solver;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import kitstow.planner.LoadPlanner;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Loading;
import kitstow.planner.model.RuleKind;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.Settings;
import kitstow.planner.report.CheckReport;
import kitstow.planner.report.Finding;
import kitstow.planner.rules.Situation;
import org.optaplanner.core.api.solver.Solver;
import org.optaplanner.core.api.solver.SolverFactory;
import org.optaplanner.core.config.score.director.ScoreDirectorFactoryConfig;
import org.optaplanner.core.config.solver.EnvironmentMode;
import org.optaplanner.core.config.solver.SolverConfig;
import org.optaplanner.core.impl.localsearch.scope.LocalSearchStepScope;
import org.optaplanner.core.impl.phase.event.PhaseLifecycleListenerAdapter;
import org.optaplanner.core.impl.phase.scope.AbstractStepScope;
import org.optaplanner.core.impl.solver.DefaultSolver;

/**
 * A search in full assert: after every move its incremental score is compared with the plain one,
 * and a difference ends it with an exception.
 */
final class AssertedSearch {
  /**
   * How a search went.
   *
   * @param plan best plan
   * @param moves moves tried
   * @param comparisons how often the two scores were compared
   */
  record Outcome(LoadPlan plan, long moves, long comparisons) {}

  private static final int OTHERS = 4;

  private AssertedSearch() {}

  /** Searches until at least so many moves have been tried. */
  static Outcome solve(Scenario scenario, long seed, long leastMoves) {
    PackingProblem problem = new PackingProblem(scenario);
    SolverConfig config =
        SearchConfig.of(
            scenario,
            new Round(seed, Round.Start.BEST, 2, 60, leastMoves, leastMoves, Aim.ALL),
            () -> false);
    config.setEnvironmentMode(EnvironmentMode.FULL_ASSERT);
    config
        .getScoreDirectorFactoryConfig()
        .setAssertionScoreDirectorFactory(
            new ScoreDirectorFactoryConfig().withEasyScoreCalculatorClass(CountedPlainScore.class));
    PlanningLoad start = PlanSearch.construct(problem, null);
    problem.elites(others(start, seed));
    Solver<PlanningLoad> solver = SolverFactory.<PlanningLoad>create(config).buildSolver();
    MoveCount moves = new MoveCount(solver, leastMoves);
    ((DefaultSolver<PlanningLoad>) solver).addPhaseLifecycleListener(moves);
    long before = CountedPlainScore.count();
    PlanningLoad found = solver.solve(start);
    LoadPlan plan = PlanningMapper.toBest(found, seed, leastMoves, 0L).plan();
    PackingProblem afresh = new PackingProblem(scenario);
    afresh.stepNm(problem.stepNm());
    int refused = Bays.settle(scenario, PackingScore.baysOf(found)).refused();
    assertThat(found.score())
        .isEqualTo(
            PlainScore.levels(afresh, plan, refused).toScore(scenario.settings().massLimits()));
    return new Outcome(plan, moves.count, CountedPlainScore.count() - before);
  }

  /** Packings whose spaces moves take over. */
  private static Elites others(PlanningLoad start, long seed) {
    Elites others = new Elites();
    Random random = new Random(seed);
    for (int i = 0; i < OTHERS; i++) {
      int[] urgency = new int[start.items().size()];
      others.add(start.problem().packingOf(Shake.afresh(start, random, urgency)));
    }
    return others;
  }

  /** Counts moves, and ends the search after the step in which enough of them have been tried. */
  private static final class MoveCount extends PhaseLifecycleListenerAdapter<PlanningLoad> {
    private final Solver<PlanningLoad> solver;
    private final long enough;
    private long count;

    private MoveCount(Solver<PlanningLoad> solver, long enough) {
      this.solver = solver;
      this.enough = enough;
    }

    @Override
    public void stepEnded(AbstractStepScope<PlanningLoad> stepScope) {
      if (stepScope instanceof LocalSearchStepScope<PlanningLoad> step) {
        count += step.getSelectedMoveCount();
        if (count >= enough) {
          solver.terminateEarly();
        }
      }
    }
  }

  /**
   * Both judges agree on a plan, and it breaks nothing that is the search's to keep: no rule of
   * place, company or reach, and no mass limit where limits are kept. What the rig breaks without
   * any gear is not held against it.
   */
  static CheckReport judged(Scenario scenario, LoadPlan plan) {
    CheckReport report = LoadPlanner.check(scenario, plan);
    LoadPlan bare = new LoadPlan(plan.scenarioId(), plan.moduleBays(), List.of(), plan.origin());
    Set<String> withoutGear =
        keys(CheckReport.of(Situation.of(Loading.of(scenario, bare))), RuleKind.values());
    Set<String> broken =
        scenario.settings().massLimits() == Settings.MassLimits.KEEP
            ? keys(report, RuleKind.GEOMETRY, RuleKind.COMPANY, RuleKind.REACH, RuleKind.LIMIT)
            : keys(report, RuleKind.GEOMETRY, RuleKind.COMPANY, RuleKind.REACH);
    broken.removeAll(withoutGear);
    assertThat(broken).isEmpty();
    return report;
  }

  private static Set<String> keys(CheckReport report, RuleKind... kinds) {
    Set<String> keys = new TreeSet<>();
    for (Finding finding : report.brokenFindings()) {
      if (Set.of(kinds).contains(finding.rule().kind())) {
        keys.add(finding.key());
      }
    }
    return keys;
  }
}
