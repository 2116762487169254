package kitstow.planner.trip;

import static kitstow.planner.trip.TripRigs.ids;
import static kitstow.planner.trip.TripRigs.massG;
import static kitstow.planner.trip.TripRigs.state;
import static kitstow.planner.trip.TripRigs.totalG;
import static org.assertj.core.api.Assertions.assertThat;

import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.SupplyKind;
import kitstow.planner.model.SupplyOrder.Decant;
import org.junit.jupiter.api.Test;

/** An 80 L tank at 832 g/L, 10 L/100 km, cans of 16,640 g (20 L) that weigh 20,000 g full. */
class DecantingTest {
  private static final long CAN_G = 16_640L;

  private static TripRigs rig(int cans) {
    return new TripRigs()
        .fuelTank("main", 80_000L, 80_000L)
        .supply("can", "pantry", 20_000L, SupplyKind.FUEL, CAN_G, cans)
        .fuelUse(10_000L, 1000, 1000);
  }

  @Test
  void aCanIsEmptiedAsSoonAsThereIsRoom() {
    Loading loading =
        rig(1).order(SupplyKind.FUEL, Decant.EARLY, "main|can").leg("drive", 500.0, 0.0).loading();
    Timeline timeline = Timeline.of(loading);
    assertThat(ids(timeline))
        .startsWith(
            "drive-start",
            "drive-01-can-decanted-before",
            "drive-01-can-decanted-after",
            "drive-end");
    LoadState before = state(timeline, "drive-01-can-decanted-before");
    assertThat(before.title()).isEqualTo("drive, after 200 km: before can is emptied into main");
    assertThat(massG(loading, before, "main-liquid")).isEqualTo(60L * 832L);
    LoadState after = state(timeline, "drive-01-can-decanted-after");
    assertThat(after.title()).isEqualTo("drive, after 200 km: can emptied into main");
    assertThat(massG(loading, after, "main-liquid")).isEqualTo(80L * 832L);
    assertThat(massG(loading, after, "can")).isEqualTo(20_000L - CAN_G);
    assertThat(massG(loading, state(timeline, "drive-end"), "main-liquid")).isEqualTo(50L * 832L);
  }

  @Test
  void decantingMovesMassAndNeverChangesIt() {
    Loading loading =
        rig(3).order(SupplyKind.FUEL, Decant.EARLY, "main|can").leg("drive", 900.0, 0.0).loading();
    Timeline timeline = Timeline.of(loading);
    for (int i = 1; i <= 3; i++) {
      String what = "drive-0" + i + "-can-" + i + "-decanted";
      LoadState before = state(timeline, what + "-before");
      LoadState after = state(timeline, what + "-after");
      assertThat(totalG(after)).isEqualTo(totalG(before));
      for (int body = 0; body < before.size(); body++) {
        String key = loading.bodies().get(body).key();
        long change = after.massG(body) - before.massG(body);
        long expected = key.equals("main-liquid") ? CAN_G : key.equals("can#" + i) ? -CAN_G : 0L;
        assertThat(change).as(key).isEqualTo(expected);
      }
    }
  }

  @Test
  void whenEmptyWaitsUntilEveryTankIsDry() {
    Loading loading =
        rig(1)
            .fuelTank("aux", 40_000L, 20_000L)
            .order(SupplyKind.FUEL, Decant.WHEN_EMPTY, "main|aux|can")
            .leg("drive", 1100.0, 0.0)
            .loading();
    Timeline timeline = Timeline.of(loading);
    assertThat(ids(timeline))
        .startsWith(
            "drive-start",
            "drive-01-main-empty",
            "drive-02-aux-empty",
            "drive-03-can-decanted-after",
            "drive-end");
    assertThat(state(timeline, "drive-02-aux-empty").title())
        .isEqualTo("drive, after 1000 km: aux empty");
    LoadState after = state(timeline, "drive-03-can-decanted-after");
    assertThat(massG(loading, after, "main-liquid")).isEqualTo(CAN_G);
    assertThat(massG(loading, state(timeline, "drive-end"), "main-liquid")).isEqualTo(CAN_G / 2);
    assertThat(timeline.shortfalls()).isEmpty();
  }

  @Test
  void aCanThatFitsNowIsEmptiedAtTheStart() {
    Timeline timeline =
        new TripRigs()
            .fuelTank("main", 80_000L, 55_000L)
            .supply("can", "pantry", 20_000L, SupplyKind.FUEL, CAN_G, 1)
            .order(SupplyKind.FUEL, Decant.EARLY, "main|can")
            .leg("wait", 0.0, 0.0)
            .timeline();
    assertThat(ids(timeline)).startsWith("wait-start", "wait-01-can-decanted-after", "wait-end");
    assertThat(timeline.segments()).hasSize(1);
    assertThat(timeline.segments().get(0).from().id()).isEqualTo("wait-01-can-decanted-after");
  }

  @Test
  void cansLeftHomeAndCansTooBigForAnyTankAreSkipped() {
    Loading loading =
        rig(3)
            .home("can", 2)
            .supply("drum", "pantry", 120_000L, SupplyKind.FUEL, 100_000L, 1)
            .order(SupplyKind.FUEL, Decant.EARLY, "main|drum,can")
            .leg("drive", 500.0, 0.0)
            .loading();
    Timeline timeline = Timeline.of(loading);
    assertThat(ids(timeline))
        .contains("drive-01-can-1-decanted-after", "drive-02-can-3-decanted-after")
        .noneMatch(id -> id.contains("drum") || id.contains("can-2"));
    assertThat(massG(loading, state(timeline, "drive-end"), "drum")).isEqualTo(120_000L);
  }

  @Test
  void outOfFuelIsSaidOnceNothingIsLeft() {
    Timeline timeline =
        rig(1)
            .order(SupplyKind.FUEL, Decant.WHEN_EMPTY, "main|can")
            .leg("far", 1250.0, 0.0)
            .timeline();
    assertThat(ids(timeline))
        .startsWith(
            "far-start",
            "far-01-main-empty",
            "far-02-can-decanted-after",
            "far-03-fuel-out",
            "far-end");
    assertThat(state(timeline, "far-03-fuel-out").title())
        .isEqualTo("far, after 1000 km: main empty, out of fuel");
    assertThat(timeline.shortfalls())
        .containsExactly(new Shortfall(SupplyKind.FUEL, "far", 25_000L, new Moment(1000.0, 0.0)));
  }
}
