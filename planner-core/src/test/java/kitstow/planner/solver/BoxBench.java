package kitstow.planner.solver;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.IntFunction;
import kitstow.planner.exact.BoxCases;
import kitstow.planner.exact.CpSat;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The search against two hundred proved packings of one space or three, of each kind. */
@Tag("exact")
class BoxBench {
  private static final int CASES = 200;

  @Test
  void sixOrSevenBoxesLieAsWellAsTheyCan() {
    CpSat.assumed();

    judge("six or seven boxes", BoxCases::oneBody, BoxWitness.STEPS_OF_SEVEN);
  }

  @Test
  void upToFourBoxesOnPartOfTheirBaseLieAsWellAsTheyCan() {
    judge("up to four boxes", BoxCases::coarse, BoxWitness.STEPS_OF_FOUR);
  }

  @Test
  void sixToEightBoxesInThreeSpacesLieAsWellAsTheyCanAndNearTheFloor() {
    CpSat.assumed();

    BoxSummary summary =
        judge("three spaces", BoxCases::threeSpaces, BoxWitness.STEPS_OF_THREE_SPACES);

    assertThat(summary.meanFloorShare()).isGreaterThanOrEqualTo(BoxWitness.LEAST_FLOOR_SHARE);
  }

  private static BoxSummary judge(String title, IntFunction<BoxCases.Proved> cases, long steps) {
    BoxSummary summary = BoxSummary.of(CASES, cases, steps);
    System.out.println(title + ": " + summary);
    summary.assertAsGoodAsProved();
    return summary;
  }
}
