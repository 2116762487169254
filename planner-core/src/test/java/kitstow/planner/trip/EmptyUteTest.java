package kitstow.planner.trip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import kitstow.planner.geometry.BoxMm;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PartState;
import org.junit.jupiter.api.Test;

/** One ute, weighed in three trims: 80 L of fuel at 832 g/L at x = 1800, spare at x = 4300. */
class EmptyUteTest {
  private static final double FUEL_G = 80.0 * 832.0;
  private static final double BARE_FRONT_G = 1_050_000.0;
  private static final double BARE_REAR_G = 790_000.0;
  private static final BoxMm BAR = new BoxMm(-900, -800, 500, -700, 800, 900);

  private double frontG = BARE_FRONT_G;
  private double rearG = BARE_REAR_G;

  private static TripRigs rig() {
    return new TripRigs()
        .fuelTank("main", 80_000L, 80_000L)
        .part("spare", 32_000L, PartState.ON)
        .accessory("bar", 70_000L, BAR)
        .people(2)
        .leg("only", 100.0, 1.0);
  }

  private EmptyUteTest with(double massG, double xMm) {
    double rear = massG * xMm / TripRigs.WHEELBASE_MM;
    rearG += rear;
    frontG += massG - rear;
    return this;
  }

  private TripRigs weighed(TripRigs rig) {
    return rig.weighed(Math.round(frontG), Math.round(rearG));
  }

  private TripRigs kerb() {
    return new EmptyUteTest()
        .with(FUEL_G, 1800.0)
        .with(32_000.0, TripRigs.SPARE_X_MM)
        .weighed(rig().weighedWithFuel("main", 80_000L).weighedWithFitted("spare"));
  }

  private TripRigs tare() {
    return new EmptyUteTest()
        .with(FUEL_G / 8.0, 1800.0)
        .with(32_000.0, TripRigs.SPARE_X_MM)
        .with(70_000.0, -800.0)
        .with(180_000.0, 3400.0)
        .with(150_000.0, 3375.0)
        .weighed(
            rig()
                .weighedWithFuel("main", 10_000L)
                .weighedWithFitted("spare", "bar", "tray", "canopy"));
  }

  private TripRigs runningOrder() {
    return new EmptyUteTest()
        .with(FUEL_G * 0.9, 1800.0)
        .with(75_000.0, 1200.0)
        .weighed(rig().weighedWithFuel("main", 72_000L).weighedWithPerson("seat1", 75_000L));
  }

  @Test
  void kerbTareAndRunningOrderOfOneUteComeToTheSameBareUte() {
    for (TripRigs rig : new TripRigs[] {kerb(), tare(), runningOrder()}) {
      EmptyUte empty = EmptyUte.of(rig.scenario());
      assertThat((double) empty.frontG()).isCloseTo(BARE_FRONT_G, within(2.0));
      assertThat((double) empty.rearG()).isCloseTo(BARE_REAR_G, within(2.0));
    }
  }

  @Test
  void kerbTareAndRunningOrderOfOneUteGiveTheSameStates() {
    Timeline expected = kerb().timeline();
    for (TripRigs rig : new TripRigs[] {tare(), runningOrder()}) {
      Loading loading = rig.loading();
      Timeline timeline = Timeline.of(loading);
      assertThat(TripRigs.ids(timeline)).isEqualTo(TripRigs.ids(expected));
      for (LoadState state : timeline.states()) {
        LoadState other = TripRigs.state(expected, state.id());
        for (int i = 0; i < state.size(); i++) {
          assertThat(state.massG(i)).isCloseTo(other.massG(i), within(500L));
        }
      }
    }
  }

  @Test
  void kerbHasFullFuelAndAllPartsButNothingFittedAfterwards() {
    AxleKerb expected = EmptyUte.kerbOf(kerb().scenario());
    double fuelRear = FUEL_G * 1800.0 / TripRigs.WHEELBASE_MM;
    double spareRear = 32_000.0 * TripRigs.SPARE_X_MM / TripRigs.WHEELBASE_MM;
    assertThat((double) expected.rearG())
        .isCloseTo(BARE_REAR_G + fuelRear + spareRear, within(2.0));
    assertThat((double) expected.frontG() + expected.rearG())
        .isCloseTo(BARE_FRONT_G + BARE_REAR_G + FUEL_G + 32_000.0, within(2.0));
    AxleKerb tare = EmptyUte.kerbOf(tare().scenario());
    assertThat(tare.frontG()).isCloseTo(expected.frontG(), within(2L));
    assertThat(tare.rearG()).isCloseTo(expected.rearG(), within(2L));
  }

  @Test
  void theRearIsRoundedAndTheFrontTakesTheRest() {
    EmptyUte empty =
        EmptyUte.of(
            rig().weighed(1_000_000L, 900_000L).weighedWithPerson("seat1", 80_001L).scenario());
    // 80,001 g x 1200 / 3200 = 30,000.375 g on the rear axle.
    assertThat(empty.rearG()).isEqualTo(870_000L);
    assertThat(empty.frontG() + empty.rearG()).isEqualTo(1_900_000L - 80_001L);
  }

  @Test
  void aBasisThatNamesSomethingUnknownIsRefused() {
    assertThatThrownBy(() -> EmptyUte.of(rig().weighedWithFuel("aux", 1L).scenario()))
        .hasMessageContaining("aux");
    assertThatThrownBy(() -> EmptyUte.of(rig().weighedWithPerson("seat9", 1L).scenario()))
        .hasMessageContaining("seat9");
    assertThatThrownBy(() -> EmptyUte.of(rig().weighedWithFitted("winch").scenario()))
        .hasMessageContaining("winch");
  }
}
