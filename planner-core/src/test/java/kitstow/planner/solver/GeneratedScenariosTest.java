package kitstow.planner.solver;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import kitstow.planner.generated.GeneratedScenarios;
import kitstow.planner.model.Scenario;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The small generated scenarios; the bench has all of them. */
class GeneratedScenariosTest {
  private static final long MOVES = 2_000;

  static IntStream numbers() {
    return IntStream.range(0, GeneratedScenarios.SMALL);
  }

  @ParameterizedTest
  @MethodSource("numbers")
  void everyMoveScoresAsThePlainScoreAndThePlanPassesTheAudit(int number) {
    Scenario scenario = GeneratedScenarios.of(number);
    AssertedSearch.Outcome outcome = AssertedSearch.solve(scenario, number, MOVES);

    assertThat(outcome.moves()).isGreaterThanOrEqualTo(MOVES);
    assertThat(outcome.comparisons()).isGreaterThanOrEqualTo(outcome.moves());
    AssertedSearch.judged(scenario, outcome.plan());
  }
}
