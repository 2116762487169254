package kitstow.planner.trip;

import static kitstow.planner.trip.TripRigs.add;
import static kitstow.planner.trip.TripRigs.full;
import static kitstow.planner.trip.TripRigs.ids;
import static kitstow.planner.trip.TripRigs.massG;
import static kitstow.planner.trip.TripRigs.state;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.Leg;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.LocalBoxMm;
import kitstow.planner.model.SupplyKind;
import kitstow.planner.model.SupplyOrder.Decant;
import kitstow.planner.model.Surface;
import kitstow.planner.model.Tank;
import org.junit.jupiter.api.Test;

/** Two people; jugs of 10,000 g of water that weigh 11,000 g full. */
class SupplyTest {
  private static final LocalBoxMm TANK_BOX = new LocalBoxMm(50, 50, 20, new SizeMm(400, 400, 200));

  private static TripRigs rig() {
    return new TripRigs().people(2);
  }

  private static TripRigs jugs(int units) {
    return rig().supply("jug", "pantry", 11_000L, SupplyKind.WATER, 10_000L, units);
  }

  private static Tank waterTank(long startMl) {
    return TripRigs.tank("tank", SupplyKind.WATER, 60_000L, 1000L, 4_000L, TANK_BOX, startMl);
  }

  private static TripRigs order(TripRigs rig, String groups) {
    return rig.order(SupplyKind.WATER, Decant.EARLY, groups);
  }

  private static Leg leg(String id, double days, Leg.Resupply... resupply) {
    return new Leg(
        id,
        id,
        0.0,
        days,
        Surface.ROAD,
        Optional.empty(),
        /* wet= */ false,
        List.of(resupply),
        /* emptyRubbish= */ false);
  }

  @Test
  void containersOfOneGroupRunOutTogetherInProportionToWhatTheyHeld() {
    Loading loading =
        order(
                rig()
                    .supply("big", "pantry", 9_000L, SupplyKind.WATER, 8_000L, 1)
                    .supply("small", "pantry", 2_500L, SupplyKind.WATER, 2_000L, 1)
                    .supply("last", "pantry", 6_000L, SupplyKind.WATER, 5_000L, 1)
                    .dailyUse(2_500L, 0L, 0L),
                "big,small|last")
            .leg("one", 0.0, 1.0)
            .leg("two", 0.0, 2.0)
            .loading();
    Timeline timeline = Timeline.of(loading);
    LoadState half = state(timeline, "one-end");
    assertThat(massG(loading, half, "big")).isEqualTo(5_000L);
    assertThat(massG(loading, half, "small")).isEqualTo(1_500L);
    assertThat(massG(loading, half, "last")).isEqualTo(6_000L);
    LoadState empty = state(timeline, "two-01-big-empty");
    assertThat(empty.title()).isEqualTo("two, after 1.0 days: big and small empty");
    assertThat(massG(loading, empty, "big")).isEqualTo(1_000L);
    assertThat(massG(loading, empty, "small")).isEqualTo(500L);
    assertThat(massG(loading, state(timeline, "two-end"), "last")).isEqualTo(1_000L);
    assertThat(timeline.shortfalls()).isEmpty();
  }

  @Test
  void anOrderThatNamesOneUnitLeavesTheOthersFull() {
    Loading loading =
        order(jugs(3).dailyUse(2_500L, 0L, 0L), "jug#2").leg("stay", 0.0, 1.0).loading();
    LoadState end = state(Timeline.of(loading), "stay-end");
    assertThat(massG(loading, end, "jug#1")).isEqualTo(11_000L);
    assertThat(massG(loading, end, "jug#2")).isEqualTo(6_000L);
    assertThat(massG(loading, end, "jug#3")).isEqualTo(11_000L);
  }

  @Test
  void unitsLeftHomeAndUnknownNamesGiveNothing() {
    Timeline timeline =
        order(jugs(2).home("jug", 1).dailyUse(5_000L, 0L, 0L), "nothing|jug||tank")
            .leg("stay", 0.0, 1.5)
            .timeline();
    assertThat(ids(timeline)).startsWith("stay-start", "stay-01-water-out", "stay-end");
    assertThat(timeline.shortfalls())
        .containsExactly(new Shortfall(SupplyKind.WATER, "stay", 5_000L, new Moment(0.0, 1.0)));
  }

  @Test
  void whatIsInNoOrderIsNeverUsed() {
    Loading loading = jugs(1).dailyUse(4_000L, 500L, 0L).leg("stay", 0.0, 1.0).loading();
    Timeline timeline = Timeline.of(loading);
    assertThat(massG(loading, state(timeline, "stay-end"), "jug")).isEqualTo(11_000L);
    assertThat(timeline.shortfalls())
        .containsExactly(
            new Shortfall(SupplyKind.WATER, "stay", 8_000L, Moment.DEPARTURE),
            new Shortfall(SupplyKind.FOOD, "stay", 1_000L, Moment.DEPARTURE));
  }

  @Test
  void fillingUpGoesBackToTheStartOfTheTrip() {
    Loading loading =
        order(
                jugs(1)
                    .module("box", "right", 0, 9_000L, 0L, waterTank(30_000L))
                    .dailyUse(18_000L, 0L, 0L),
                "tank|jug")
            .leg(leg("one", 1.0))
            .leg(leg("two", 0.0, full(SupplyKind.WATER)))
            .loading();
    Timeline timeline = Timeline.of(loading);
    LoadState before = state(timeline, "one-end");
    assertThat(massG(loading, before, "tank-liquid")).isZero();
    assertThat(massG(loading, before, "jug")).isEqualTo(5_000L);
    LoadState after = state(timeline, "two-start");
    assertThat(massG(loading, after, "tank-liquid")).isEqualTo(30_000L);
    assertThat(massG(loading, after, "jug")).isEqualTo(11_000L);
  }

  @Test
  void anAmountIsAddedInOrderOfUseUpToCapacity() {
    Loading loading =
        order(
                jugs(1)
                    .module("box", "right", 0, 9_000L, 0L, waterTank(55_000L))
                    .dailyUse(2_500L, 0L, 0L),
                "jug|tank")
            .leg(leg("one", 2.0))
            .leg(leg("two", 0.0, add(SupplyKind.WATER, 13_000L)))
            .leg(leg("three", 0.0, add(SupplyKind.WATER, 90_000L)))
            .loading();
    Timeline timeline = Timeline.of(loading);
    LoadState two = state(timeline, "two-start");
    assertThat(massG(loading, two, "jug")).isEqualTo(11_000L);
    assertThat(massG(loading, two, "tank-liquid")).isEqualTo(58_000L);
    assertThat(massG(loading, state(timeline, "three-start"), "tank-liquid")).isEqualTo(60_000L);
  }

  @Test
  void fuelTakesOffRoadAndTowingIntoAccount() {
    Leg leg =
        new Leg(
            "track",
            "track",
            200.0,
            0.0,
            Surface.OFF_ROAD,
            Optional.of("van"),
            /* wet= */ false,
            List.of(),
            /* emptyRubbish= */ false);
    Loading loading =
        rig()
            .fuelTank("main", 80_000L, 80_000L)
            .trailer("van", 900_000L, 90_000L)
            .fuelUse(10_000L, 1300, 1250)
            .order(SupplyKind.FUEL, Decant.EARLY, "main")
            .leg(leg)
            .loading();
    LoadState end = state(Timeline.of(loading), "track-end");
    // 2 x 10 L x 1.3 x 1.25 = 32.5 L at 832 g/L.
    assertThat(massG(loading, end, "main-liquid")).isEqualTo(80L * 832L - 27_040L);
    assertThat(massG(loading, end, "ball")).isEqualTo(90_000L);
    assertThat(end.trailerId()).contains("van");
  }

  @Test
  void liquidSinksToHalfItsLevelAndGearKeepsItsBox() {
    Loading loading =
        order(
                jugs(1)
                    .module("box", "right", 0, 9_000L, 0L, waterTank(60_000L))
                    .dailyUse(20_000L, 0L, 0L),
                "tank|jug")
            .leg("stay", 0.0, 1.0)
            .loading();
    Timeline timeline = Timeline.of(loading);
    int liquid = loading.indexOf("tank-liquid");
    assertThat(state(timeline, "stay-start").shift(liquid).zMm()).isZero();
    // A third is left of 200 mm: its centre is at 33.3 mm instead of 100 mm.
    assertThat(state(timeline, "stay-end").shift(liquid).zMm())
        .isCloseTo(100.0 / 3.0 - 100.0, within(1.0e-9));
    assertThat(timeline.segments().get(0).at(0.5).shift(liquid).zMm())
        .isCloseTo(-100.0 / 3.0, within(1.0e-9));
    assertThat(state(timeline, "stay-end").shift(loading.indexOf("jug")).zMm()).isZero();
  }

  @Test
  void stocksSayHowLongTheRestWouldLast() {
    Timeline timeline =
        order(
                jugs(2)
                    .fuelTank("main", 80_000L, 80_000L)
                    .fuelUse(10_000L, 1000, 1000)
                    .order(SupplyKind.FUEL, Decant.EARLY, "main")
                    .dailyUse(2_500L, 0L, 0L),
                "jug")
            .leg("drive", 300.0, 1.0)
            .timeline();
    assertThat(timeline.stocks())
        .containsExactly(
            new Stock(
                SupplyKind.FUEL,
                "drive",
                80L * 832L,
                50L * 832L,
                30_000L,
                50_000L,
                OptionalDouble.empty(),
                OptionalDouble.of(500.0)),
            new Stock(
                SupplyKind.WATER,
                "drive",
                20_000L,
                15_000L,
                5_000L,
                15_000L,
                OptionalDouble.of(3.0),
                OptionalDouble.empty()));
  }

  @Test
  void simultaneousEventsShareOneState() {
    Timeline timeline =
        order(
                jugs(1)
                    .supply("box", "pantry", 6_000L, SupplyKind.FOOD, 5_000L, 1)
                    .order(SupplyKind.FOOD, Decant.EARLY, "box")
                    .dailyUse(5_000L, 2_500L, 0L),
                "jug")
            .leg("stay", 0.0, 4.0)
            .timeline();
    assertThat(ids(timeline)).startsWith("stay-start", "stay-01-water-out", "stay-end");
    assertThat(state(timeline, "stay-01-water-out").title())
        .isEqualTo("stay, after 1.0 days: jug empty, out of water; box empty, out of food");
    assertThat(timeline.shortfalls()).hasSize(2);
  }

  @Test
  void whatRunsOutAtTheVeryEndOfALegIsNoStateOfItsOwn() {
    Timeline timeline =
        order(jugs(1).dailyUse(5_000L, 0L, 0L), "jug")
            .leg("one", 0.0, 1.0)
            .leg("two", 0.0, 1.0)
            .timeline();
    assertThat(ids(timeline)).startsWith("one-start", "one-end", "two-start", "two-end");
    assertThat(timeline.shortfalls())
        .containsExactly(new Shortfall(SupplyKind.WATER, "two", 10_000L, new Moment(0.0, 1.0)));
  }
}
