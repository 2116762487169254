package kitstow.planner.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Trailer;
import kitstow.planner.model.Ute;
import kitstow.planner.testkit.Masses;
import kitstow.planner.testkit.RigBuilder;
import kitstow.planner.testkit.StateBuilder;
import org.junit.jupiter.api.Test;

class BallOnAxlesTest {
  private static final Loading LOADING =
      RigBuilder.aDualCab()
          .trailer("van", Masses.kg(2000), Masses.kg(150), /* braked= */ true)
          .load();

  private static BallOnAxles shares() {
    Ute ute = LOADING.scenario().ute();
    Trailer van = LOADING.scenario().trailers().get(0);
    return BallOnAxles.of(ute, ute.ball().orElseThrow(), van);
  }

  @Test
  void sharesAddUpToTheBallMass() {
    assertThat(shares().rearKg() + shares().frontKg()).isCloseTo(150.0, within(1.0e-9));
    assertThat(shares().frontKg()).isNegative();
  }

  /** Moments about the front axle: 150 kg at the ball against the wheelbase. */
  @Test
  void rearAxleCarriesTheBallByItsLever() {
    Ute ute = LOADING.scenario().ute();
    int ballXMm = ute.ball().orElseThrow().xMm();
    assertThat(shares().rearKg()).isCloseTo(150.0 * ballXMm / ute.wheelbaseMm(), within(1.0e-9));
    assertThat(shares().behindRearAxleMm()).isEqualTo(ballXMm - ute.wheelbaseMm());
  }

  @Test
  void axleLoadsWithAndWithoutTheTrailerDifferByThem() {
    LoadState alone = StateBuilder.driving(LOADING).build();
    LoadState towing = StateBuilder.driving(LOADING).towing("van").build();
    AxleLoads without = AxleLoads.of(LOADING, alone);
    AxleLoads with = AxleLoads.of(LOADING, towing);
    assertThat(with.rearKg() - without.rearKg()).isCloseTo(shares().rearKg(), within(1.0e-6));
    assertThat(with.frontKg() - without.frontKg()).isCloseTo(shares().frontKg(), within(1.0e-6));
  }
}
