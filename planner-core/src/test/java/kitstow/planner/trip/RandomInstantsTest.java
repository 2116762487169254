package kitstow.planner.trip;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
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
}
