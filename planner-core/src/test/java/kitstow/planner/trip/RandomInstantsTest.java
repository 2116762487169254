package kitstow.planner.trip;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import kitstow.planner.model.Body;
import kitstow.planner.model.Leg;
import kitstow.planner.model.LoadKind;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import org.junit.jupiter.api.Test;

/** No moment between the breakpoints is worse than the worst breakpoint of the trip. */
class RandomInstantsTest {
  private static final int INSTANTS = 1_000;
  private static final int TRIPS = 60;

  /** Half a gram for every body that changes on the way. */
  private static final double ROUNDING_G = 15.0;

  @Test
  void noInstantBeatsTheWorstBreakpoint() {
    Random random = new Random(20);
    Map<Long, Loading> loadings = new HashMap<>();
    for (int i = 0; i < INSTANTS; i++) {
      long seed = 1_000L + random.nextInt(TRIPS);
      Loading loading = loadings.computeIfAbsent(seed, RandomTrips::loading);
      Timeline timeline = Timeline.of(loading);
      List<Segment> segments = timeline.segments();
      Segment segment = segments.get(random.nextInt(segments.size()));
      LoadState instant = segment.at(random.nextDouble());
      Loads.worstMoving(loading, timeline)
          .assertNotBeatenBy(Loads.of(loading, instant), ROUNDING_G);
    }
  }

  /** Rubbish is left out: it is at its most while other things in its space are used up. */
  @Test
  void noStopOnTheWayLoadsASpaceMoreThanTheWorstCamp() {
    Random random = new Random(21);
    int compared = 0;
    for (int i = 0; i < INSTANTS; i++) {
      Loading loading = RandomTrips.loading(1_000L + random.nextInt(TRIPS));
      Timeline timeline = Timeline.of(loading);
      List<Segment> segments = timeline.segments();
      Segment segment = segments.get(random.nextInt(segments.size()));
      Leg leg = leg(loading, segment);
      if (leg.days() > 0.0) {
        compared++;
        Map<String, Double> camp = new HashMap<>();
        for (LoadState state : timeline.states()) {
          if (state.kind() == LoadKind.PARKED && state.slidesOut().isEmpty()) {
            inSpaces(loading, state).forEach((space, load) -> camp.merge(space, load, Math::max));
          }
        }
        inSpaces(loading, segment.at(random.nextDouble()))
            .forEach(
                (space, load) ->
                    assertThat(load)
                        .as(space + " in " + segment.from().id())
                        .isLessThanOrEqualTo(camp.get(space) + ROUNDING_G));
      }
    }
    assertThat(compared).isGreaterThan(INSTANTS / 2);
  }

  private static Leg leg(Loading loading, Segment segment) {
    return loading.scenario().trip().legs().stream()
        .filter(leg -> segment.from().legId().equals(Optional.of(leg.id())))
        .findFirst()
        .orElseThrow();
  }

  private static Map<String, Double> inSpaces(Loading loading, LoadState state) {
    Map<String, Double> loads = new HashMap<>();
    for (int i = 0; i < state.size(); i++) {
      double massG = state.massG(i);
      Body body = loading.bodies().get(i);
      if (!body.id().equals("rubbish")) {
        body.spaceId().ifPresent(space -> loads.merge(space, massG, Double::sum));
      }
    }
    return loads;
  }
}
