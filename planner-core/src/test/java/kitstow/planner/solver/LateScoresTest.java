package kitstow.planner.solver;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.Settings;
import kitstow.planner.scenarios.ShippedFiles;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.optaplanner.core.api.score.buildin.bendablelong.BendableLongScore;
import org.optaplanner.core.api.solver.SolverFactory;
import org.optaplanner.core.impl.localsearch.scope.LocalSearchStepScope;
import org.optaplanner.core.impl.phase.event.PhaseLifecycleListenerAdapter;
import org.optaplanner.core.impl.phase.scope.AbstractStepScope;
import org.optaplanner.core.impl.solver.DefaultSolver;

/** A packing is given up half way only where the solver would refuse what comes of it. */
class LateScoresTest {
  private static final int LATENESS = 7;
  private static final int STEPS = 120;
  private static final int RUINS = 400;

  @Test
  void refusesWhatIsWorseThanTheLastStepAndTheOneSoManyBack() {
    LateScores late = new LateScores(2);
    assertThat(late.refuses(moment(9))).as("nothing begun").isFalse();

    late.start(moment(5));
    late.took(moment(6));
    late.took(moment(8));

    assertThat(late.refuses(moment(8))).as("no worse than the last").isFalse();
    assertThat(late.refuses(moment(9))).isTrue();
    late.took(moment(4));
    assertThat(late.refuses(moment(8))).as("no worse than two back").isFalse();
    assertThat(late.refuses(moment(9))).isTrue();
    assertThat(late.steps()).isEqualTo(3L);
  }

  @Test
  void noStepThatTheSolverTakesWasRefused() {
    Scenario scenario = ShippedFiles.scenario("counter-1500");
    PackingProblem problem = new PackingProblem(scenario);
    LateScores late = new LateScores(LATENESS);
    List<Boolean> refused = new ArrayList<>();
    DefaultSolver<PlanningLoad> solver =
        (DefaultSolver<PlanningLoad>)
            SolverFactory.<PlanningLoad>create(
                    SearchConfig.of(
                        scenario,
                        new Round(3L, Round.Start.BEST, 0, LATENESS, STEPS, STEPS, Aim.ALL),
                        () -> false))
                .buildSolver();
    solver.addPhaseLifecycleListener(
        new PhaseLifecycleListenerAdapter<PlanningLoad>() {
          @Override
          public void stepEnded(AbstractStepScope<PlanningLoad> step) {
            if (step instanceof LocalSearchStepScope) {
              refused.add(late.refuses((BendableLongScore) step.getScore()));
            }
          }
        });
    solver.addPhaseLifecycleListener(late);

    solver.solve(PlanSearch.construct(problem, null));

    assertThat(refused).hasSize(STEPS).containsOnly(false);
    assertThat(late.steps()).isEqualTo(STEPS);
  }

  @ParameterizedTest
  @CsvSource({
    "counter-1500, ALL", "counter-1500, ROOM", "counter-1500, VALUE",
    "remote-fortnight, ALL", "remote-fortnight, ROOM", "dual-cab-fortnight, ALL"
  })
  void whatIsGivenUpWouldHaveBeenRefused(String name, Aim aim) {
    Scenario scenario = ShippedFiles.scenario(name);
    LoadPlan byHand = ShippedFiles.plan(name, scenario);
    PackingProblem problem = new PackingProblem(scenario);
    PlanningLoad load =
        PlanningMapper.toPlanning(problem, PlanningMapper.toPacking(problem, byHand));
    problem.aim(aim);
    LateScores late = new LateScores(1);
    late.start(problem.packingOf(load).score(aim));
    int givenUp = 0;
    int carriedOut = 0;
    for (long seed = 0L; seed < RUINS; seed++) {
      Packing packing = problem.packingOf(load);
      problem.late(null);
      assertThat(recreate(packing, seed)).as("nobody is there to give it up").isTrue();
      BendableLongScore score = packing.score(aim);
      problem.late(late);
      boolean hopeless = !recreate(problem.packingOf(load), seed);
      if (hopeless) {
        givenUp++;
        assertThat(late.refuses(score)).as("ruin %d", seed).isTrue();
      } else {
        carriedOut++;
      }
    }

    assertThat(givenUp).as("given up").isGreaterThan(RUINS / 20);
    assertThat(carriedOut).as("carried out").isGreaterThan(RUINS / 20);
  }

  private static boolean recreate(Packing packing, long seed) {
    Random random = new Random(seed);
    Ruin ruin = Ruin.of(packing, random);
    List<Integer> out = ruin.inOrder();
    return RuinMoves.recreate(packing, ruin, out, random, Prospect.of(packing, out));
  }

  private static BendableLongScore moment(long steps) {
    return new ScoreLevels(0L, 0L, 0L, 0L, steps, 0L).toScore(Settings.MassLimits.KEEP);
  }
}
