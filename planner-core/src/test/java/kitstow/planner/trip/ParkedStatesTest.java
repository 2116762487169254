package kitstow.planner.trip;

import static kitstow.planner.trip.TripRigs.ids;
import static kitstow.planner.trip.TripRigs.massG;
import static kitstow.planner.trip.TripRigs.state;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.Growth;
import kitstow.planner.model.Leg;
import kitstow.planner.model.LoadKind;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.LocalBoxMm;
import kitstow.planner.model.ShiftMm;
import kitstow.planner.model.SupplyKind;
import kitstow.planner.model.SupplyOrder.Decant;
import kitstow.planner.model.Surface;
import kitstow.planner.model.Tank;
import kitstow.planner.model.Zone;
import org.junit.jupiter.api.Test;

/**
 * A drawer to the rear with a fridge on a slide of its own on top of it, and a slide to the left.
 */
class ParkedStatesTest {
  private static final Tank TANK =
      TripRigs.tank(
          "tank",
          SupplyKind.WATER,
          10_000L,
          1000L,
          1_000L,
          new LocalBoxMm(0, 0, 0, new SizeMm(200, 200, 100)),
          5_000L);

  private static TripRigs rig() {
    return new TripRigs()
        .person("driver", 80_000L, Optional.of(Zone.CANOPY_ROOF))
        .person("mate", 70_000L, Optional.of(Zone.CAB_ROOF))
        .person("guest", 60_000L, Optional.empty())
        .module("drawer", "rear", 700, 20_000L, 30_000L)
        .module("fridge", "drawer/top", 500, 6_000L, 9_000L, TANK)
        .module("slide", "left", 600, 15_000L, 25_000L)
        .gear("pan", "drawer/in", 3_000L)
        .gear("milk", "fridge/in", 2_000L)
        .gear("stove", "slide/in", 5_000L)
        .gear("chair", "pantry", 4_000L)
        .trailer("van", 900_000L, 90_000L);
  }

  private static void assertOut(Loading loading, LoadState state, Map<String, ShiftMm> expected) {
    for (int i = 0; i < state.size(); i++) {
      String key = loading.bodies().get(i).key();
      ShiftMm shift = state.shift(i);
      ShiftMm want = expected.getOrDefault(key, ShiftMm.NONE);
      assertThat(shift.xMm()).as(key).isEqualTo(want.xMm());
      assertThat(shift.yMm()).as(key).isEqualTo(want.yMm());
    }
  }

  @Test
  void aSlideThatIsOutTakesExactlyItsRidersAlong() {
    Loading loading = rig().leg("drive", 10.0, 1.0).loading();
    Timeline timeline = Timeline.of(loading);
    ShiftMm back = new ShiftMm(700, 0, 0.0);
    LoadState drawer = state(timeline, "departure-drawer-out");
    assertThat(drawer.slidesOut()).containsExactly("drawer");
    assertThat(drawer.noteOnly()).isFalse();
    assertOut(
        loading,
        drawer,
        Map.of(
            "drawer-moving",
            back,
            "pan",
            back,
            "fridge",
            back,
            "fridge-moving",
            back,
            "milk",
            back,
            "tank",
            back,
            "tank-liquid",
            back));
    ShiftMm farther = new ShiftMm(500, 0, 0.0);
    assertOut(
        loading,
        state(timeline, "departure-fridge-out"),
        Map.of("fridge-moving", farther, "milk", farther));
    ShiftMm left = new ShiftMm(0, -600, 0.0);
    assertOut(
        loading,
        state(timeline, "departure-slide-out"),
        Map.of("slide-moving", left, "stove", left));
  }

  @Test
  void allSlidesOutAtOnceIsANoteAndAddsUpTheChain() {
    Loading loading = rig().leg("drive", 10.0, 1.0).loading();
    LoadState all = state(Timeline.of(loading), "departure-all-out");
    assertThat(all.noteOnly()).isTrue();
    assertThat(all.slidesOut()).containsExactlyInAnyOrder("drawer", "fridge", "slide");
    ShiftMm back = new ShiftMm(700, 0, 0.0);
    ShiftMm both = new ShiftMm(1200, 0, 0.0);
    ShiftMm left = new ShiftMm(0, -600, 0.0);
    assertOut(
        loading,
        all,
        Map.of(
            "drawer-moving",
            back,
            "pan",
            back,
            "fridge",
            back,
            "tank",
            back,
            "tank-liquid",
            back,
            "fridge-moving",
            both,
            "milk",
            both,
            "slide-moving",
            left,
            "stove",
            left));
  }

  @Test
  void theLevelOfALiquidIsKeptWhenItsSlideIsOut() {
    Loading loading = rig().leg("drive", 10.0, 1.0).loading();
    LoadState drawer = state(Timeline.of(loading), "departure-drawer-out");
    assertThat(drawer.shift(loading.indexOf("tank-liquid"))).isEqualTo(new ShiftMm(700, 0, -25.0));
  }

  @Test
  void nobodyIsAboardWhenASlideIsOut() {
    Loading loading = rig().leg("drive", 10.0, 1.0).loading();
    LoadState drawer = state(Timeline.of(loading), "departure-drawer-out");
    for (String person : new String[] {"driver", "mate", "guest"}) {
      assertThat(massG(loading, drawer, person)).isZero();
    }
  }

  @Test
  void sleepersLieOnTheirRoofAndTheOthersAreOff() {
    Loading loading = rig().leg("drive", 10.0, 1.0).loading();
    Timeline timeline = Timeline.of(loading);
    for (String id : new String[] {"departure-camp", "drive-camp"}) {
      LoadState camp = state(timeline, id);
      assertThat(camp.kind()).isEqualTo(LoadKind.PARKED);
      assertThat(massG(loading, camp, "driver")).isEqualTo(80_000L);
      assertThat(massG(loading, camp, "mate")).isEqualTo(70_000L);
      assertThat(massG(loading, camp, "guest")).isZero();
      // Canopy from x 2500 to 4250, top at 900 + 900; seats at x 1200, z 900, y -550 and -200.
      assertThat(camp.shift(loading.indexOf("driver")))
          .isEqualTo(new ShiftMm(3375 - 1200, 550, 900.0));
      assertThat(camp.shift(loading.indexOf("mate"))).isEqualTo(new ShiftMm(0, 200, 950.0));
    }
  }

  @Test
  void theTrailerIsOffTheBallInCamp() {
    Loading loading = rig().leg("drive", 10.0, 1.0).loading();
    for (LoadState state : Timeline.of(loading).states()) {
      if (state.kind() != LoadKind.MOVING) {
        assertThat(massG(loading, state, "ball")).isZero();
        assertThat(state.trailerId()).isEmpty();
      }
    }
  }

  @Test
  void aLegWithoutAnyTimeHasNoCamp() {
    assertThat(ids(rig().leg("ferry", 10.0, 0.0).timeline()))
        .doesNotContain("ferry-camp")
        .contains("departure-camp");
  }

  @Test
  void aSlideThatHasBecomeHeavierIsJudgedAgainAtTheEndOfTheLeg() {
    Loading loading =
        rig()
            .growing("bag", "slide/in", 300L, new Growth(500L, 9_000L, 0L))
            .leg("drive", 10.0, 1.0)
            .loading();
    Timeline timeline = Timeline.of(loading);
    assertThat(ids(timeline))
        .contains("drive-end-slide-out")
        .doesNotContain("drive-end-drawer-out", "drive-end-fridge-out");
    assertThat(massG(loading, state(timeline, "drive-end-slide-out"), "bag")).isEqualTo(1_800L);
  }

  private static Loading filledOnTheSecondLeg(long waterG) {
    Leg filled =
        new Leg(
            "filled",
            "filled",
            10.0,
            1.0,
            Surface.ROAD,
            Optional.empty(),
            /* wet= */ false,
            List.of(TripRigs.add(SupplyKind.WATER, waterG)),
            /* emptyRubbish= */ false);
    return rig()
        .dailyUse(1_000L, 0L, 0L)
        .order(SupplyKind.WATER, Decant.EARLY, "tank")
        .leg("drive", 10.0, 1.0)
        .leg(filled)
        .loading();
  }

  @Test
  void aSlideThatIsHeavierAfterFillingUpIsJudgedAgainAtTheStartOfTheLeg() {
    Loading loading = filledOnTheSecondLeg(5_000L);
    Timeline timeline = Timeline.of(loading);
    assertThat(ids(timeline))
        .contains("filled-start-drawer-out")
        .doesNotContain("filled-start-slide-out", "filled-end-drawer-out");
    assertThat(massG(loading, state(timeline, "filled-start-drawer-out"), "tank-liquid"))
        .isEqualTo(5_000L - 3_000L + 5_000L);
  }

  @Test
  void aLegThatTakesTimeHasACampAtItsStartWhereTheUteWasFilledUp() {
    Loading loading = filledOnTheSecondLeg(5_000L);
    Timeline timeline = Timeline.of(loading);
    assertThat(ids(timeline))
        .contains("filled-start-camp", "filled-camp")
        .doesNotContain("drive-start-camp");
    LoadState camp = state(timeline, "filled-start-camp");
    assertThat(camp.kind()).isEqualTo(LoadKind.PARKED);
    assertThat(massG(loading, camp, "tank-liquid")).isEqualTo(5_000L - 3_000L + 5_000L);
    assertThat(massG(loading, camp, "driver")).isEqualTo(80_000L);
  }

  @Test
  void aLegOnWhichNothingBecameHeavierHasNoCampAtItsStart() {
    assertThat(ids(Timeline.of(filledOnTheSecondLeg(0L)))).doesNotContain("filled-start-camp");
  }

  @Test
  void whatIsWetFromTheStartOfALegIsInACampThere() {
    Leg wet =
        new Leg(
            "rain",
            "rain",
            10.0,
            1.0,
            Surface.ROAD,
            Optional.empty(),
            /* wet= */ true,
            List.of(),
            /* emptyRubbish= */ false);
    Loading loading =
        rig().growing("awning", "slide/in", 9_000L, new Growth(0L, 0L, 2_000L)).leg(wet).loading();
    Timeline timeline = Timeline.of(loading);
    assertThat(massG(loading, state(timeline, "departure-camp"), "awning")).isEqualTo(9_000L);
    assertThat(massG(loading, state(timeline, "rain-start-camp"), "awning")).isEqualTo(11_000L);
    assertThat(massG(loading, state(timeline, "rain-start-slide-out"), "awning"))
        .isEqualTo(11_000L);
  }

  @Test
  void aTripWithoutLegsStillHasItsDeparture() {
    assertThat(ids(rig().timeline()))
        .containsExactly(
            "departure-camp",
            "departure-drawer-out",
            "departure-fridge-out",
            "departure-slide-out",
            "departure-all-out",
            "certification");
  }
}
