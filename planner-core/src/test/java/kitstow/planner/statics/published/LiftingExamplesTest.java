package kitstow.planner.statics.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import kitstow.planner.statics.LiftingLimit;
import org.junit.jupiter.api.Test;

/** Published answers of the revised lifting equation. */
class LiftingExamplesTest {
  /** [S114]: H 50 cm gives 0.50; with 1.00 and 0.95 as printed, 10.9 kg; 15 kg is too heavy. */
  @Test
  void aBoxBehindABarrierIsTooHeavy() {
    assertThat(LiftingLimit.horizontalRatio(500)).isCloseTo(0.50, within(0.005));
    assertThat(LiftingLimit.heightRatio(750)).isEqualTo(1.00);
    double kg =
        LiftingLimit.kg(LiftingLimit.horizontalRatio(500), LiftingLimit.heightRatio(750), 0.95);
    assertThat(kg).isCloseTo(10.9, within(0.05)).isLessThan(15.0);
  }

  /** [S114]: the same with the barrier gone, 0.80; printed 17.5 kg, so that 15 kg is fine. */
  @Test
  void theSameBoxIsFineOnceTheBarrierIsGone() {
    double kg = LiftingLimit.kg(0.80, LiftingLimit.heightRatio(750), 0.95);
    assertThat(kg).isCloseTo(17.5, within(0.05)).isGreaterThan(15.0);
  }

  /** [S115]: 0.83, 0.93, 0.93, 1, 1 and 0.90 give 14.86 kg. */
  @Test
  void anImprovedLiftIsTheProductOfItsRatios() {
    assertThat(LiftingLimit.kg(0.83, 0.93, 0.93, 1.0, 1.0, 0.90)).isCloseTo(14.86, within(0.01));
    assertThat(LiftingLimit.horizontalRatio(300)).isCloseTo(0.83, within(0.005));
    assertThat(LiftingLimit.travelRatio(400)).isCloseTo(0.93, within(0.005));
  }

  /** A task of a teaching site: H 25, V 55, D 95 cm, 0.88 and 0.95; printed 15.7 kg, index 0.76. */
  @Test
  void theIndexIsTheMassOverWhatIsRecommended() {
    double kg =
        LiftingLimit.kg(
            LiftingLimit.horizontalRatio(250),
            LiftingLimit.heightRatio(550),
            LiftingLimit.travelRatio(950),
            LiftingLimit.turnRatio(0.0),
            0.88,
            0.95);
    assertThat(kg).isCloseTo(15.7, within(0.05));
    // With the ratio of the travel rounded to two digits the index is the printed one, too.
    assertThat(LiftingLimit.travelRatio(950)).isCloseTo(0.87, within(0.005));
    double rounded = LiftingLimit.kg(LiftingLimit.heightRatio(550), 0.87, 0.88, 0.95);
    assertThat(12.0 / rounded).isCloseTo(0.76, within(0.005));
  }

  /** [S113]: the printed table, 30, 45, 60 and 90 degrees. */
  @Test
  void turningTheTrunkCostsAsPrinted() {
    assertThat(LiftingLimit.turnRatio(30.0)).isCloseTo(0.90, within(0.005));
    assertThat(LiftingLimit.turnRatio(45.0)).isCloseTo(0.86, within(0.005));
    assertThat(LiftingLimit.turnRatio(60.0)).isCloseTo(0.81, within(0.005));
    assertThat(LiftingLimit.turnRatio(90.0)).isCloseTo(0.71, within(0.005));
  }

  @Test
  void outOfReachNothingIsRecommended() {
    assertThat(LiftingLimit.horizontalRatio(631)).isZero();
    assertThat(LiftingLimit.heightRatio(1751)).isZero();
    assertThat(LiftingLimit.travelRatio(1751)).isZero();
    assertThat(LiftingLimit.turnRatio(136.0)).isZero();
    assertThat(LiftingLimit.horizontalRatio(100)).isEqualTo(1.0);
    assertThat(LiftingLimit.travelRatio(100)).isEqualTo(1.0);
  }
}
