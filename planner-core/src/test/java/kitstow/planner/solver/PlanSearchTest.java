package kitstow.planner.solver;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import kitstow.planner.LoadPlanner;
import kitstow.planner.model.RuleKind;
import kitstow.planner.model.Scenario;
import kitstow.planner.planted.SoundPlans;
import kitstow.planner.report.CheckReport;
import kitstow.planner.scenarios.ShippedFiles;
import kitstow.planner.testkit.RigBuilder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.optaplanner.core.api.solver.SolverFactory;
import org.optaplanner.core.config.score.director.ScoreDirectorFactoryConfig;
import org.optaplanner.core.config.solver.EnvironmentMode;
import org.optaplanner.core.config.solver.SolverConfig;

/** Plans found on generated, invented scenarios. */
class PlanSearchTest {
  private static PlanSearch.Best solve(Scenario scenario, long seed, long steps) {
    return PlanSearch.solve(
        new PlanSearch.Request(scenario, seed, steps, /* seconds= */ 0.0, /* threads= */ 1),
        best -> {},
        () -> false);
  }

  @ParameterizedTest
  @ValueSource(longs = {0, 1, 2, 3})
  void solvedPlanBreaksNoRuleOfPlaceCompanyOrReach(long seed) {
    Scenario scenario = SoundPlans.scenario(seed);
    PlanSearch.Best best = solve(scenario, seed, 40);

    CheckReport report = LoadPlanner.check(scenario, best.plan());
    assertThat(report.brokenFindings()).noneMatch(f -> f.rule().kind() != RuleKind.NEED);
  }

  @Test
  void nothingToPlaceIsAPlanToo() {
    Scenario scenario =
        RigBuilder.aBareDualCab().person("driver", 80_000L, "driver").roadDay(10.0).scenario();

    PlanSearch.Best best = solve(scenario, 1L, 40);

    assertThat(best.plan().placements()).isEmpty();
    assertThat(best.unitsHome()).isZero();
  }

  @Test
  void moreSeedsThanThreadsShareTheTime() {
    Map<Long, Long> calculations = new TreeMap<>();
    PlanSearch.solve(
        new PlanSearch.Request(
            ShippedFiles.scenario("counter-1500"), Optional.empty(), 1L, 3, 0L, 6.0, 1),
        best ->
            calculations.merge(
                best.plan().origin().seed().getAsLong(), best.scoreCalculations(), Math::max),
        () -> false);
    assertThat(calculations).containsOnlyKeys(1L, 2L, 3L);
    assertThat(calculations.values()).allMatch(scored -> scored > 10L);
  }

  @Test
  void aSearchThatIsCalledOffAtOnceHasOneFirstPacking() {
    PlanSearch.Best best =
        PlanSearch.solve(
            new PlanSearch.Request(
                ShippedFiles.scenario("counter-1500"), Optional.empty(), 1L, 500, 0L, 600.0, 1),
            better -> {},
            () -> true);
    assertThat(best.plan().placements()).isNotEmpty();
    assertThat(best.plan().origin().seed()).hasValue(1L);
  }

  @Test
  void sameSeedAndStepsGiveTheSamePlan() {
    Scenario scenario = SoundPlans.scenario(7);

    assertThat(solve(scenario, 3, 40)).isEqualTo(solve(scenario, 3, 40));
  }

  @ParameterizedTest
  @ValueSource(longs = {0, 1, 2})
  void incrementalScoreEqualsThePlainScoreInFullAssert(long seed) {
    Scenario scenario = SoundPlans.scenario(seed);
    PackingProblem problem = new PackingProblem(scenario);
    SolverConfig config =
        SearchConfig.of(
            scenario, new Round(seed, Round.Start.BEST, 2, 60, 60L, 60L, Aim.ALL), () -> false);
    config.setEnvironmentMode(EnvironmentMode.FULL_ASSERT);
    config
        .getScoreDirectorFactoryConfig()
        .setAssertionScoreDirectorFactory(
            new ScoreDirectorFactoryConfig().withEasyScoreCalculatorClass(PlainScore.class));
    PlanningLoad start = PlanSearch.construct(problem, null);

    PlanningLoad found = SolverFactory.<PlanningLoad>create(config).buildSolver().solve(start);

    assertThat(found.score()).isNotNull();
  }
}
