package kitstow.planner.trip;

import static kitstow.planner.trip.TripRigs.ids;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import kitstow.planner.model.LoadKind;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.SupplyKind;
import kitstow.planner.model.SupplyOrder.Decant;
import kitstow.planner.model.Surface;
import kitstow.planner.model.Zone;
import org.junit.jupiter.api.Test;

/** How states and segments hang together, over trips of all sorts. */
class TimelineTest {
  private static final int TRIPS = 200;

  @Test
  void idsAreUnique() {
    for (long seed = 0; seed < TRIPS; seed++) {
      assertThat(ids(Timeline.of(RandomTrips.loading(seed))))
          .as("seed %s", seed)
          .doesNotHaveDuplicates();
    }
  }

  @Test
  void idsStayUniqueWhateverLegsAndContainersAreCalled() {
    Timeline timeline =
        new TripRigs()
            .person("p", 80_000L, Optional.of(Zone.CANOPY_ROOF))
            .supply("jug", "pantry", 3_000L, SupplyKind.WATER, 2_000L, 2)
            .supply("jug-2", "pantry", 3_000L, SupplyKind.WATER, 2_000L, 1)
            .dailyUse(7_000L, 0L, 0L)
            .order(SupplyKind.WATER, Decant.EARLY, "jug#1|jug#2|jug-2")
            .leg("departure", 10.0, 1.0)
            .leg("departure-01-jug-1-empty", 10.0, 1.0)
            .timeline();
    assertThat(ids(timeline)).doesNotHaveDuplicates().contains("departure-camp-2");
  }

  @Test
  void aTripRunsTheSameEveryTime() {
    for (long seed = 0; seed < 20; seed++) {
      Loading loading = RandomTrips.loading(seed);
      Timeline once = Timeline.of(loading);
      Timeline again = Timeline.of(loading);
      assertThat(ids(again)).isEqualTo(ids(once));
      assertThat(again.stocks()).isEqualTo(once.stocks());
      assertThat(again.shortfalls()).isEqualTo(once.shortfalls());
    }
  }

  @Test
  void everyLegRunsFromItsStartToItsEndWithoutAGapInTime() {
    for (long seed = 0; seed < TRIPS; seed++) {
      Loading loading = RandomTrips.loading(seed);
      Timeline timeline = Timeline.of(loading);
      Moment reached = Moment.DEPARTURE;
      for (Segment segment : timeline.segments()) {
        assertThat(segment.start()).as("seed %s", seed).isEqualTo(reached);
        reached = segment.end();
        assertThat(timeline.states().get(segment.fromIndex())).isSameAs(segment.from());
        assertThat(timeline.states().get(segment.toIndex())).isSameAs(segment.to());
        assertThat(segment.from().legId()).isEqualTo(segment.to().legId());
        assertThat(segment.from().kind()).isEqualTo(LoadKind.MOVING);
      }
    }
  }

  @Test
  void movingStatesComeFirstAndCertificationLast() {
    Timeline timeline = Timeline.of(RandomTrips.loading(5L));
    List<LoadState> states = timeline.states();
    for (int i = 1; i < states.size(); i++) {
      assertThat(states.get(i).kind()).isGreaterThanOrEqualTo(states.get(i - 1).kind());
    }
    assertThat(states.get(states.size() - 1).id()).isEqualTo("certification");
  }

  @Test
  void noBodyEverWeighsLessThanNothingOrMoreThanItsMost() {
    for (long seed = 0; seed < TRIPS; seed++) {
      Loading loading = RandomTrips.loading(seed);
      for (LoadState state : Timeline.of(loading).states()) {
        for (int i = 2; i < state.size(); i++) {
          assertThat(state.massG(i))
              .as("%s in %s, seed %s", loading.bodies().get(i).key(), state.id(), seed)
              .isBetween(0L, Math.max(81_600L, loading.bodies().get(i).nominalG()));
        }
      }
    }
  }

  @Test
  void aLegWithoutDistanceUsesWaterAndOneWithoutDaysBurnsFuel() {
    Timeline timeline =
        new TripRigs()
            .people(1)
            .fuelTank("main", 80_000L, 80_000L)
            .supply("jug", "pantry", 11_000L, SupplyKind.WATER, 10_000L, 1)
            .fuelUse(10_000L, 1000, 1000)
            .dailyUse(1_000L, 0L, 0L)
            .order(SupplyKind.WATER, Decant.EARLY, "jug")
            .order(SupplyKind.FUEL, Decant.EARLY, "main")
            .leg("stay", 0.0, 2.0)
            .leg("dash", 100.0, 0.0)
            .leg("nothing", 0.0, 0.0)
            .timeline();
    assertThat(timeline.stocks())
        .extracting(Stock::usedMlOrG)
        .containsExactly(0L, 2_000L, 10_000L, 0L, 0L, 0L);
    assertThat(timeline.segments()).hasSize(3);
  }

  @Test
  void aSegmentEndsInItsStatesAndKeepsTheirKind() {
    Loading loading = RandomTrips.loading(3L);
    for (Segment segment : Timeline.of(loading).segments()) {
      for (int i = 0; i < loading.bodies().size(); i++) {
        assertThat(segment.at(0.0).massG(i)).isEqualTo(segment.from().massG(i));
        assertThat(segment.at(1.0).massG(i)).isEqualTo(segment.to().massG(i));
      }
      LoadState middle = segment.at(0.5);
      assertThat(middle.kind()).isEqualTo(LoadKind.MOVING);
      assertThat(middle.surface()).isEqualTo(segment.from().surface());
      assertThat(middle.trailerId()).isEqualTo(segment.from().trailerId());
    }
    Segment any = Timeline.of(loading).segments().get(0);
    assertThatThrownBy(() -> any.at(1.5)).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void aTripWithoutPeopleSuppliesOrTanksRuns() {
    Timeline timeline = new TripRigs().leg("push", 10.0, 1.0).timeline();
    assertThat(ids(timeline)).startsWith("push-start", "push-end");
    assertThat(TripRigs.state(timeline, "push-start").surface()).isEqualTo(Surface.ROAD);
  }
}
