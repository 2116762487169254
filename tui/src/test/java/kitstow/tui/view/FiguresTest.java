package kitstow.tui.view;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class FiguresTest {
  @Test
  void loadsAreRoundedUp() {
    assertThat(Figures.loadKg(1999.901)).isEqualTo("2,000.0");
    assertThat(Figures.wholeLoadKg(1650.001)).isEqualTo("1,651");
  }

  @Test
  void marginsAreRoundedDown() {
    assertThat(Figures.marginKg(0.099)).isEqualTo("0.0");
    assertThat(Figures.marginKg(-0.001)).isEqualTo("-0.1");
  }

  @Test
  void noiseOfBinaryFractionsIsNoLoad() {
    assertThat(Figures.loadKg(0.1 + 0.2)).isEqualTo("0.3");
    assertThat(Figures.marginKg(0.3 - 0.1)).isEqualTo("0.2");
  }

  @Test
  void aLimitOfNothingHasNoShare() {
    assertThat(Figures.usedPercent(Double.POSITIVE_INFINITY)).isEqualTo("none");
    assertThat(Figures.usedPercent(1.0001)).isEqualTo("101 %");
  }
}
