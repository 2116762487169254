package kitstow.planner.solver;

import static kitstow.planner.testkit.ItemBuilder.anItem;
import static kitstow.planner.testkit.ModuleBuilder.aDrawer;
import static kitstow.planner.testkit.ModuleBuilder.aSlide;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import kitstow.planner.LoadPlanner;
import kitstow.planner.model.Need;
import kitstow.planner.model.Scenario;
import kitstow.planner.report.CheckReport;
import kitstow.planner.testkit.RigBuilder;
import kitstow.planner.testkit.Rigs;
import org.junit.jupiter.api.Test;
import org.optaplanner.core.api.solver.SolverFactory;
import org.optaplanner.core.config.score.director.ScoreDirectorFactoryConfig;
import org.optaplanner.core.config.solver.EnvironmentMode;
import org.optaplanner.core.config.solver.SolverConfig;

/** Modules whose bays the search chooses. */
class OpenBaysTest {
  private static Scenario scenario() {
    RigBuilder rig =
        RigBuilder.aDualCab()
            .module(aSlide("slide"), Need.MUST, Rigs.FRONT_BAY, Rigs.REAR_BAY, "drawer/deck")
            .module(aDrawer("drawer"), Need.MUST, Rigs.REAR_BAY, Rigs.FRONT_BAY);
    for (int i = 0; i < 12; i++) {
      rig.items(anItem("case-" + i).size(300, 250, 180).massG(9_000L + 500L * i));
    }
    return rig.scenario();
  }

  @Test
  void heavyModulesAndGearEndUpForward() {
    CheckReport report =
        LoadPlanner.plan(
            new PlanSearch.Request(scenario(), 1L, 400L, 0.0, 1), best -> {}, () -> false);
    Map<String, String> bays = report.situation().loading().plan().moduleBays();

    assertThat(report.broken()).isFalse();
    // The search begins with the slide in front, and 50 kg of drawer behind its 25.
    assertThat(bays).containsKey("slide").containsEntry("drawer", Rigs.FRONT_BAY);
  }

  @Test
  void choosingBaysKeepsTheScoreInFullAssert() {
    PackingProblem problem = new PackingProblem(scenario());
    SolverConfig config =
        SearchConfig.of(
            scenario(), new Round(5L, Round.Start.BEST, 2, 60, 60L, 60L, Aim.ALL), () -> false);
    config.setEnvironmentMode(EnvironmentMode.FULL_ASSERT);
    config
        .getScoreDirectorFactoryConfig()
        .setAssertionScoreDirectorFactory(
            new ScoreDirectorFactoryConfig().withEasyScoreCalculatorClass(PlainScore.class));

    PlanningLoad found =
        SolverFactory.<PlanningLoad>create(config)
            .buildSolver()
            .solve(PlanSearch.construct(problem, null));

    assertThat(found.score()).isNotNull();
  }
}
