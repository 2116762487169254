package kitstow.planner.solver;

import static org.assertj.core.api.Assertions.assertThat;

import kitstow.planner.exact.BoxCases;
import kitstow.planner.exact.CpSat;
import org.junit.jupiter.api.Test;

/** The search against proved packings of one space or three; the bench has 200 of each. */
class BoxWitnessTest {
  private static final int CASES = 20;

  /** These take longest to prove. */
  private static final int CASES_OF_THREE = 8;

  @Test
  void sixOrSevenBoxesLieAsWellAsTheyCan() {
    CpSat.assumed();

    BoxSummary.of(CASES, BoxCases::oneBody, BoxWitness.STEPS_OF_SEVEN).assertAsGoodAsProved();
  }

  @Test
  void upToFourBoxesOnPartOfTheirBaseLieAsWellAsTheyCan() {
    BoxSummary.of(CASES, BoxCases::coarse, BoxWitness.STEPS_OF_FOUR).assertAsGoodAsProved();
  }

  @Test
  void sixToEightBoxesInThreeSpacesLieAsWellAsTheyCanAndNearTheFloor() {
    CpSat.assumed();

    BoxSummary summary =
        BoxSummary.of(CASES_OF_THREE, BoxCases::threeSpaces, BoxWitness.STEPS_OF_THREE_SPACES);

    summary.assertAsGoodAsProved();
    assertThat(summary.meanFloorShare()).isGreaterThanOrEqualTo(BoxWitness.LEAST_FLOOR_SHARE);
  }
}
