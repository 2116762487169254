package kitstow.planner.trip;

import static kitstow.planner.trip.TripRigs.massG;
import static kitstow.planner.trip.TripRigs.state;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import kitstow.planner.model.Growth;
import kitstow.planner.model.Leg;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Surface;
import org.junit.jupiter.api.Test;

/** Two people, 250 g of rubbish each a day up to 2,000 g in a bag of 300 g; an awning of 9 kg. */
class GrowthTest {
  private static TripRigs rig() {
    return new TripRigs()
        .people(2)
        .growing("bag", "pantry", 300L, new Growth(250L, 2_000L, 0L))
        .growing("awning", "pantry", 9_000L, new Growth(0L, 0L, 1_500L));
  }

  private static Leg leg(String id, double days, boolean wet, boolean emptyRubbish) {
    return new Leg(
        id, id, 100.0, days, Surface.ROAD, Optional.empty(), wet, List.of(), emptyRubbish);
  }

  @Test
  void rubbishGrowsByPeopleAndDaysUpToItsMost() {
    Loading loading = rig().leg("one", 100.0, 3.0).leg("two", 100.0, 2.0).loading();
    Timeline timeline = Timeline.of(loading);
    assertThat(massG(loading, state(timeline, "one-start"), "bag")).isEqualTo(300L);
    assertThat(massG(loading, state(timeline, "one-end"), "bag")).isEqualTo(1_800L);
    assertThat(state(timeline, "two-01-bag-full").title())
        .isEqualTo("two, after 50 km: bag at its heaviest");
    assertThat(massG(loading, state(timeline, "two-01-bag-full"), "bag")).isEqualTo(2_300L);
    assertThat(massG(loading, state(timeline, "two-end"), "bag")).isEqualTo(2_300L);
  }

  @Test
  void emptyingStartsItAgain() {
    Loading loading = rig().leg("one", 100.0, 3.0).leg(leg("two", 1.0, false, true)).loading();
    Timeline timeline = Timeline.of(loading);
    assertThat(massG(loading, state(timeline, "two-start"), "bag")).isEqualTo(300L);
    assertThat(massG(loading, state(timeline, "two-end"), "bag")).isEqualTo(800L);
  }

  @Test
  void canvasIsWetFromTheStartToTheEndOfAWetLegOnly() {
    Loading loading =
        rig()
            .leg(leg("dry", 1.0, false, false))
            .leg(leg("wet", 1.0, true, true))
            .leg(leg("dryagain", 1.0, false, false))
            .loading();
    Timeline timeline = Timeline.of(loading);
    assertThat(massG(loading, state(timeline, "dry-end"), "awning")).isEqualTo(9_000L);
    assertThat(massG(loading, state(timeline, "wet-start"), "awning")).isEqualTo(10_500L);
    assertThat(massG(loading, state(timeline, "wet-end"), "awning")).isEqualTo(10_500L);
    assertThat(massG(loading, state(timeline, "wet-camp"), "awning")).isEqualTo(10_500L);
    assertThat(massG(loading, state(timeline, "dryagain-start"), "awning")).isEqualTo(9_000L);
  }

  @Test
  void aWetFirstLegLeavesTheDepartureDry() {
    Loading loading = rig().leg(leg("wet", 1.0, true, false)).loading();
    Timeline timeline = Timeline.of(loading);
    assertThat(massG(loading, state(timeline, "departure-camp"), "awning")).isEqualTo(9_000L);
  }
}
