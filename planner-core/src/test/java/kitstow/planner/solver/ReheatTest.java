package kitstow.planner.solver;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import kitstow.planner.model.Scenario;
import kitstow.planner.scenarios.ShippedFiles;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a round settles from is a little worse than the best plan, and breaks nothing for it. */
class ReheatTest {
  private static final double WORSE = 1.06;
  private static final long STEPS = 800L;

  @ParameterizedTest
  @CsvSource({
    "counter-1500, 1",
    "counter-1500, 2",
    "remote-fortnight, 1",
    "dual-cab-fortnight, 1",
    "workshop-drawers, 3"
  })
  void theMomentIsAnotherAndNothingIsLeftBehindForIt(String name, long seed) {
    PlanningLoad cold = settled(ShippedFiles.scenario(name));

    PlanningLoad hot = Reheat.of(cold, new Random(seed), () -> false);

    ScoreLevels before = levels(cold);
    ScoreLevels after = levels(hot);
    assertThat(after.momentSteps())
        .isNotEqualTo(before.momentSteps())
        .isLessThanOrEqualTo((long) (WORSE * before.momentSteps()));
    assertThat(after.conflicts()).isEqualTo(before.conflicts());
    assertThat(after.mustLeft()).isLessThanOrEqualTo(before.mustLeft());
    assertThat(after.valueLeft()).isLessThanOrEqualTo(before.valueLeft());
    assertThat((double) after.overG()).isLessThanOrEqualTo(WORSE * before.overG());
    assertThat(levels(Reheat.of(cold, new Random(seed), () -> false)))
        .as("same seed")
        .isEqualTo(after);
  }

  @ParameterizedTest
  @ValueSource(longs = {1L, 2L, 3L})
  void whatHasSettledIsMadeWorse(long seed) {
    PlanningLoad cold = settled(ShippedFiles.scenario("work-day"));

    PlanningLoad hot = Reheat.of(cold, new Random(seed), () -> false);

    assertThat(levels(hot).momentSteps()).isGreaterThan(levels(cold).momentSteps());
  }

  @Test
  void whatIsStoppedStaysAsItIs() {
    PlanningLoad cold = settled(ShippedFiles.scenario("work-day"));

    assertThat(levels(Reheat.of(cold, new Random(1L), () -> true))).isEqualTo(levels(cold));
  }

  private static PlanningLoad settled(Scenario scenario) {
    PlanSearch.Request request =
        new PlanSearch.Request(scenario, /* seed= */ 5L, STEPS, /* seconds= */ 0.0, 1);
    return new SeedSearch(request, 5L, best -> {}, System::nanoTime, /* fillsSpaces= */ true)
        .call();
  }

  private static ScoreLevels levels(PlanningLoad load) {
    return load.problem().packingOf(load).levels();
  }
}
