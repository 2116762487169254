package kitstow.planner.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitstow.planner.model.Body;
import kitstow.planner.model.BodyKind;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.statics.LoadLine;
import kitstow.planner.statics.Margin;

/**
 * The single weighing that would narrow the band of a margin most. Units of one catalogue entry are
 * one weighing, and so are the two axles' shares of an empty ute on a limit that counts both.
 *
 * @param title what to weigh
 * @param bodyKeys its bodies
 * @param kg what it weighs by the figures now
 * @param bandKg band of the margin now
 * @param thenKg band of the margin once it is weighed
 */
public record WeighFirst(
    String title, List<String> bodyKeys, double kg, double bandKg, double thenKg) {
  /** A scale is taken to be right to 1 % (common practice, no source). */
  private static final double WEIGHED_RATIO = 0.01;

  /** Copies its collections. */
  public WeighFirst {
    bodyKeys = List.copyOf(bodyKeys);
  }

  /** The weighing that narrows a reading's band most; none where no weighing narrows it. */
  public static Optional<WeighFirst> of(Loading loading, LimitReading reading) {
    return Contributors.line(loading, reading)
        .flatMap(line -> most(loading, reading.state(), line));
  }

  private static Optional<WeighFirst> most(Loading loading, LoadState state, LoadLine line) {
    Map<String, Double> parts = Margin.partsG(loading, state, line);
    double nowKg = Margin.rssKg(line, parts);
    WeighFirst most = null;
    for (Map.Entry<String, Double> part : parts.entrySet()) {
      List<Body> bodies = bodies(loading, line, part.getKey());
      double onLimitG = 0.0;
      double kg = 0.0;
      boolean liquid = false;
      for (LoadLine.Term term : line.terms()) {
        Body body = loading.bodies().get(term.body());
        if (body.toleranceKey().equals(part.getKey())) {
          onLimitG += state.massG(term.body()) * (double) term.numerator() / line.denominator();
          kg += state.massG(term.body()) / 1000.0;
          liquid |= body.kind() == BodyKind.LIQUID;
        }
      }
      Map<String, Double> then = new LinkedHashMap<>(parts);
      then.put(
          part.getKey(), Math.min(Math.abs(part.getValue()), WEIGHED_RATIO * Math.abs(onLimitG)));
      double thenKg = Margin.rssKg(line, then);
      // What is in a tank goes by its level and cannot be put on a scale alone.
      boolean narrower = thenKg < nowKg - 1.0e-9 && (most == null || thenKg < most.thenKg());
      if (narrower && !liquid) {
        List<String> keys = new ArrayList<>();
        bodies.forEach(body -> keys.add(body.key()));
        most = new WeighFirst(MassTrust.titleOf(bodies.get(0)), keys, kg, nowKg, thenKg);
      }
    }
    return Optional.ofNullable(most);
  }

  private static List<Body> bodies(Loading loading, LoadLine line, String toleranceKey) {
    List<Body> bodies = new ArrayList<>();
    for (LoadLine.Term term : line.terms()) {
      Body body = loading.bodies().get(term.body());
      if (body.toleranceKey().equals(toleranceKey)) {
        bodies.add(body);
      }
    }
    return bodies;
  }
}
