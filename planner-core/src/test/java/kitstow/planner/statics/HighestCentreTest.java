package kitstow.planner.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import kitstow.planner.model.LoadKind;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.ShiftMm;
import kitstow.planner.model.Surface;
import kitstow.planner.testkit.PointRig;
import kitstow.planner.trip.Moment;
import kitstow.planner.trip.Segment;
import kitstow.planner.trip.Timeline;
import org.junit.jupiter.api.Test;

class HighestCentreTest {
  /**
   * A tank on stilts: as it empties from the top its own centre sinks, the whole may rise first.
   */
  @Test
  void closedFormFindsThePeakThatFineStepsFind() {
    Random random = new Random(4);
    int peaksInside = 0;
    for (int round = 0; round < 300; round++) {
      Loading loading =
          PointRig.wheelbase(3000)
              .at("a", 1 + random.nextInt(900_000), 1000)
              .at("b", 1 + random.nextInt(900_000), 2000)
              .at("c", 1 + random.nextInt(900_000), 2500)
              .loading();
      LoadState from = state(loading, random);
      LoadState to = state(loading, random);
      Segment segment = new Segment(0, 1, from, to, moment(), moment());
      HighestCentre found =
          HighestCentre.of(
                  loading, new Timeline(List.of(from, to), List.of(segment), List.of(), List.of()))
              .orElseThrow();
      double best = Double.NEGATIVE_INFINITY;
      for (int step = 0; step <= 2000; step++) {
        best = Math.max(best, CentreOfMass.of(loading, segment.at(step / 2000.0)).zMm());
      }
      assertThat(found.zMm()).as("round " + round).isCloseTo(best, within(0.5));
      peaksInside += found.fraction() > 0.0 ? 1 : 0;
    }
    assertThat(peaksInside).isGreaterThan(20);
  }

  private static LoadState state(Loading loading, Random random) {
    long[] massG = new long[loading.bodies().size()];
    List<ShiftMm> shifts = new ArrayList<>(Collections.nCopies(massG.length, ShiftMm.NONE));
    for (int i = 0; i < massG.length; i++) {
      massG[i] = Math.round(loading.bodies().get(i).nominalG() * (0.1 + random.nextDouble()));
      shifts.set(i, new ShiftMm(0, 0, 2000.0 * random.nextDouble()));
    }
    return new LoadState(
        "s" + random.nextInt(),
        "state",
        LoadKind.MOVING,
        Surface.ROAD,
        Optional.empty(),
        Optional.empty(),
        Set.of(),
        /* noteOnly= */ false,
        massG,
        shifts);
  }

  private static Moment moment() {
    return new Moment(0, 0.0);
  }
}
