package kitstow.planner.trip;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Map;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.model.Body;
import kitstow.planner.model.LoadKind;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;

/** Totals, axle loads, overhang moment and what spaces and slides hold, by the plain formulae. */
record Loads(Map<String, Double> byName) {

  static Loads of(Loading loading, double[] massG) {
    double wheelbase = loading.scenario().ute().wheelbaseMm();
    Map<String, Double> sums = new HashMap<>();
    for (int i = 0; i < massG.length; i++) {
      Body body = loading.bodies().get(i);
      double m = massG[i];
      double centre = (body.box().minXMm() + body.box().maxXMm()) / 2.0;
      add(sums, "total", m);
      add(sums, "rear", m * centre / wheelbase);
      add(sums, "front", m * (1.0 - centre / wheelbase));
      if (body.inOverhang()) {
        // Grams at a wheelbase's length, so that one tolerance serves all.
        add(sums, "overhang", m * meanBehind(body.box(), wheelbase) / wheelbase);
      }
      body.spaceId().ifPresent(space -> add(sums, "in " + space, m));
      body.movesWith().forEach(slide -> add(sums, "on " + slide, m));
    }
    return new Loads(sums);
  }

  static Loads of(Loading loading, LoadState state) {
    double[] massG = new double[state.size()];
    for (int i = 0; i < massG.length; i++) {
      massG[i] = state.massG(i);
    }
    return of(loading, massG);
  }

  /** The largest of each over the moving states. */
  static Loads worstMoving(Loading loading, Timeline timeline) {
    Map<String, Double> worst = new HashMap<>();
    for (LoadState state : timeline.states()) {
      if (state.kind() == LoadKind.MOVING) {
        of(loading, state)
            .byName
            .forEach((name, load) -> worst.merge(name, load, (a, b) -> Math.max(a, b)));
      }
    }
    return new Loads(worst);
  }

  void assertNotBeatenBy(Loads other, double toleranceG) {
    assertThat(other.byName.keySet()).isEqualTo(byName.keySet());
    other.byName.forEach(
        (name, load) ->
            assertThat(load).as(name).isLessThanOrEqualTo(byName.get(name) + toleranceG));
  }

  /** Mean of max(0, x - rear axle) over the length of a box, by its integral. */
  private static double meanBehind(BoxMm box, double rearAxle) {
    double ahead = box.minXMm() - rearAxle;
    double behind = box.maxXMm() - rearAxle;
    if (behind <= 0.0) {
      return 0.0;
    }
    return ahead >= 0.0 ? (ahead + behind) / 2.0 : behind * behind / 2.0 / (behind - ahead);
  }

  private static void add(Map<String, Double> sums, String name, double load) {
    sums.merge(name, load, (a, b) -> a + b);
  }
}
