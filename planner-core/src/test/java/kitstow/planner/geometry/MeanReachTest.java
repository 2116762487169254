package kitstow.planner.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import kitstow.planner.statics.Lever;
import org.junit.jupiter.api.Test;

class MeanReachTest {
  @Test
  void whatLiesBehindCountsAtItsMiddleAndWhatLiesAheadNotAtAll() {
    assertThat(MeanReach.behindMm(200.0, 100.0)).isEqualTo(250.0);
    assertThat(MeanReach.behindMm(0.0, 100.0)).isEqualTo(50.0);
    assertThat(MeanReach.behindMm(-100.0, 100.0)).isZero();
    assertThat(MeanReach.behindMm(-300.0, 100.0)).isZero();
  }

  @Test
  void halfBehindIsAnEighthOfTheLength() {
    assertThat(MeanReach.behindMm(-400.0, 800.0)).isEqualTo(100.0);
  }

  @Test
  void isTheMomentOfTheStaticsByItsMass() {
    for (int from = -900; from <= 300; from += 50) {
      double momentGMm = Lever.overhangHalfGMm(10_000L, from, from + 620L, 0L) / 2.0;
      assertThat(MeanReach.behindMm(from, 620.0))
          .as("from %d mm", from)
          .isCloseTo(momentGMm / 10_000.0, within(1.0e-4));
    }
  }
}
