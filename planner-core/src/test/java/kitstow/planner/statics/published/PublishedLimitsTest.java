package kitstow.planner.statics.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import kitstow.planner.model.SeatAllowance;
import kitstow.planner.statics.RearOverhangLimit;
import kitstow.planner.statics.TyreLoadIndex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Limits and allowances as regulators print them. */
class PublishedLimitsTest {
  /** [S33] UK government guide: wheelbase 3 m gives 1.8 m. */
  @Test
  void ukGuideAllowsSixtyPercentOfTheWheelbase() {
    assertThat(RearOverhangLimit.sixtyPercentMm(3000)).isEqualTo(1800);
  }

  /** [S30] National Heavy Vehicle Regulator: the lesser of 60 % and 3.7 m. */
  @Test
  void australianRuleCapsTheOverhang() {
    assertThat(RearOverhangLimit.sixtyPercentMm(6500)).isEqualTo(3900);
    assertThat(RearOverhangLimit.australianMm(6500)).isEqualTo(3700);
    assertThat(RearOverhangLimit.australianMm(3000)).isEqualTo(1800);
  }

  /** [S45] Trade article on VSB 14: five seats make 408 kg; [S42] 49 CFR 571.110: 150 lb. */
  @Test
  void seatAllowancesAreThoseOfTheRegimes() {
    assertThat(5 * SeatAllowance.AUSTRALIA.massG() / 1000.0).isCloseTo(408.0, within(0.1));
    assertThat(SeatAllowance.UNITED_STATES.massG() / 1000.0).isCloseTo(68.04, within(0.005));
  }

  /** UN Regulation 54 Annex 4 (reprinted in ADR 96/00 App. A), read in public charts. */
  @ParameterizedTest
  @CsvSource({"100,800", "105,925", "110,1060", "115,1215", "120,1400", "125,1650", "130,1900"})
  void tyreCapacityFollowsTheLoadIndexTable(int index, long kg) {
    assertThat(TyreLoadIndex.capacityG(index)).hasValue(kg * 1000L);
  }

  /** Derived: 45 x 10^(LI/80) lies within 1.75 % of every entry, which finds typing errors. */
  @Test
  void wholeTyreTableFollowsTheGeometricSeries() {
    for (int index = 100; index <= 130; index++) {
      double series = 45.0 * Math.pow(10.0, index / 80.0);
      assertThat(TyreLoadIndex.capacityG(index).getAsLong() / 1000.0 / series)
          .isCloseTo(1.0, within(0.0175));
    }
    assertThat(TyreLoadIndex.capacityG(99)).isEmpty();
    assertThat(TyreLoadIndex.capacityG(131)).isEmpty();
  }
}
