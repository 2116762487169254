package kitstow.planner.trip;

import static kitstow.planner.trip.TripRigs.massG;
import static kitstow.planner.trip.TripRigs.state;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import kitstow.planner.model.Body;
import kitstow.planner.model.BodyKind;
import kitstow.planner.model.LoadKind;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PartState;
import kitstow.planner.model.SupplyKind;
import kitstow.planner.model.Surface;
import org.junit.jupiter.api.Test;

/** The fit-out as built, whoever travels and whatever is packed. */
class CertificationStateTest {
  private static Loading loading() {
    return new TripRigs()
        .fuelTank("main", 80_000L, 20_000L)
        .part("spare", 32_000L, PartState.ON)
        .person("driver", 95_000L, Optional.empty())
        .person("mate", 60_000L, Optional.empty())
        .module("drawer", "rear", 700, 20_000L, 30_000L)
        .gear("pan", "drawer/in", 3_000L)
        .supply("can", "pantry", 20_000L, SupplyKind.FUEL, 16_640L, 1)
        .trailer("van", 900_000L, 90_000L)
        .leg("drive", 10.0, 1.0)
        .loading();
  }

  @Test
  void fiveSeatsAt68KgAnd13Point6KgOfLuggageComeTo408Kg() {
    // VSB 14 as a trade article sums it up: 5 x (68 + 13.6) = 408 kg. [S45]
    Loading loading = loading();
    LoadState state = state(Timeline.of(loading), "certification");
    long seatsG = 0L;
    for (Body body : loading.bodies()) {
      if (body.kind() == BodyKind.PERSON) {
        seatsG += massG(loading, state, body.key());
      }
    }
    assertThat(seatsG).isEqualTo(408_000L);
  }

  @Test
  void tanksAreFullAndGearAndTrailerAreOff() {
    Loading loading = loading();
    LoadState state = state(Timeline.of(loading), "certification");
    assertThat(state.kind()).isEqualTo(LoadKind.CERTIFICATION);
    assertThat(state.surface()).isEqualTo(Surface.ROAD);
    assertThat(massG(loading, state, "main-liquid")).isEqualTo(80L * 832L);
    assertThat(massG(loading, state, "pan")).isZero();
    assertThat(massG(loading, state, "can")).isZero();
    assertThat(massG(loading, state, "ball")).isZero();
    assertThat(massG(loading, state, "spare")).isEqualTo(32_000L);
    assertThat(massG(loading, state, "drawer-moving")).isEqualTo(30_000L);
    assertThat(massG(loading, state, "tray")).isEqualTo(180_000L);
    assertThat(massG(loading, state, "canopy")).isEqualTo(150_000L);
  }
}
