package kitstow.planner.trip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.model.Leg;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.SupplyKind;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The event-driven trip against {@link TinySteps}, at leg ends and in between. */
class TripOracleTest {
  /** Not a divisor of the number of steps, so that samples fall anywhere. */
  private static final int SAMPLE = 1_371;

  private Loading loading;
  private Timeline timeline;
  private Loads worst;
  private final List<String> compared = new ArrayList<>();

  @ParameterizedTest
  @ValueSource(
      longs = {
        1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20, 21, 22, 23, 24, 25,
        26, 27, 28, 29, 30
      })
  void tinyStepsComeToTheSameMasses(long seed) {
    loading = RandomTrips.loading(seed);
    timeline = Timeline.of(loading);
    worst = Loads.worstMoving(loading, timeline);
    TinySteps steps = new TinySteps(loading);
    steps.run(this::compare);
    assertThat(compared).hasSizeGreaterThan(2 * loading.scenario().trip().legs().size());
  }

  private void compare(Leg leg, int step, TinySteps now) {
    if (step == 0) {
      compare(leg, TripRigs.state(timeline, leg.id() + "-start"), now);
    } else if (step == TinySteps.STEPS) {
      compare(leg, TripRigs.state(timeline, leg.id() + "-end"), now);
      compareMissing(leg, now);
    }
    if (step % SAMPLE == 0) {
      compareInside(leg, step / (double) TinySteps.STEPS, now);
      worst.assertNotBeatenBy(Loads.of(loading, now.massesG(leg)), stepG(leg, now) + 10.0);
    }
  }

  private void compare(Leg leg, LoadState state, TinySteps now) {
    double[] expected = now.massesG(leg);
    double tolerance = stepG(leg, now);
    for (int i = 0; i < expected.length; i++) {
      assertThat((double) state.massG(i))
          .as("%s of %s", loading.bodies().get(i).key(), state.id())
          .isCloseTo(expected[i], within(tolerance));
    }
    compared.add(state.id());
  }

  /** A can is emptied up to one step late, so nothing is compared so near to a breakpoint. */
  private void compareInside(Leg leg, double at, TinySteps now) {
    for (Segment segment : timeline.segments()) {
      if (!segment.from().legId().orElse("").equals(leg.id())) {
        continue;
      }
      double from = shareOfLeg(leg, segment.start());
      double to = shareOfLeg(leg, segment.end());
      double margin = 3.0 / TinySteps.STEPS;
      if (at > from + margin && at < to - margin) {
        compare(leg, segment.at((at - from) / (to - from)), now);
      }
    }
  }

  private double shareOfLeg(Leg leg, Moment moment) {
    double km = 0.0;
    double days = 0.0;
    for (Leg before : loading.scenario().trip().legs()) {
      if (before.id().equals(leg.id())) {
        break;
      }
      km += before.distanceKm();
      days += before.days();
    }
    return leg.distanceKm() > 0.0
        ? (moment.km() - km) / leg.distanceKm()
        : leg.days() > 0.0 ? (moment.days() - days) / leg.days() : Double.NaN;
  }

  private void compareMissing(Leg leg, TinySteps now) {
    for (SupplyKind kind : SupplyKind.values()) {
      double found = 0.0;
      for (Shortfall shortfall : timeline.shortfalls()) {
        if (shortfall.kind() == kind && shortfall.legId().equals(leg.id())) {
          found = shortfall.missingMlOrG();
        }
      }
      double tolerance = 3.0 * now.perLeg(kind, leg) / TinySteps.STEPS + 1.0;
      assertThat(found)
          .as("%s missing on %s", kind, leg.id())
          .isCloseTo(now.missing(kind), within(tolerance));
    }
  }

  /** What a few steps use, and the rounding. */
  private static double stepG(Leg leg, TinySteps now) {
    double most = 0.0;
    for (SupplyKind kind : SupplyKind.values()) {
      most = Math.max(most, now.perLeg(kind, leg));
    }
    return 4.0 * most / TinySteps.STEPS + 1.5;
  }
}
