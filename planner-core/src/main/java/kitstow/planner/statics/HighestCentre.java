package kitstow.planner.statics;

import java.util.Optional;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.trip.Segment;
import kitstow.planner.trip.Timeline;

/**
 * The highest centre of mass while moving. Between two breakpoints masses and liquid levels are
 * linear in time, so the height is a quadratic over a linear function: its peak may lie inside a
 * segment and is found from three samples in closed form.
 *
 * @param zMm height above the ground
 * @param stateId the state it is in or, inside a segment, the state it follows
 * @param fraction how far along the segment, 0 at the state itself
 */
public record HighestCentre(double zMm, String stateId, double fraction) {
  /** Highest centre over a trip; absent where nothing moves. */
  public static Optional<HighestCentre> of(Loading loading, Timeline timeline) {
    HighestCentre highest = null;
    for (Segment segment : timeline.segments()) {
      Quotient height = Quotient.of(loading, segment);
      for (double fraction : height.candidates()) {
        double z = height.at(fraction);
        if (highest == null || z > highest.zMm()) {
          boolean atEnd = fraction == 1.0;
          highest =
              new HighestCentre(
                  z, atEnd ? segment.to().id() : segment.from().id(), atEnd ? 0.0 : fraction);
        }
      }
    }
    return Optional.ofNullable(highest);
  }

  /** Height over a segment: (n0 + n1 f + n2 f^2) / (m0 + m1 f). */
  private record Quotient(double n0, double n1, double n2, double m0, double m1) {
    static Quotient of(Loading loading, Segment segment) {
      LoadState from = segment.from();
      LoadState to = segment.to();
      double n0 = 0.0;
      double n1 = 0.0;
      double n2 = 0.0;
      double m0 = 0.0;
      double m1 = 0.0;
      for (int i = 0; i < from.size(); i++) {
        double mass = from.massG(i);
        double massRise = (double) to.massG(i) - mass;
        double z = Bodies.centreZMm(loading, from, i);
        double zRise = Bodies.centreZMm(loading, to, i) - z;
        // (m + dm f)(z + dz f), summed over bodies; CG = sum(m z) / sum(m). [S1, S3]
        n0 += mass * z;
        n1 += mass * zRise + massRise * z;
        n2 += massRise * zRise;
        m0 += mass;
        m1 += massRise;
      }
      return new Quotient(n0, n1, n2, m0, m1);
    }

    double at(double f) {
      double mass = m0 + m1 * f;
      return mass == 0.0 ? 0.0 : (n0 + n1 * f + n2 * f * f) / mass;
    }

    /** Both ends and the places between them where the slope is zero. */
    double[] candidates() {
      // d/df = 0: n2 m1 f^2 + 2 n2 m0 f + n1 m0 - n0 m1 = 0
      double a = n2 * m1;
      double b = 2.0 * n2 * m0;
      double c = n1 * m0 - n0 * m1;
      double root1 = Double.NaN;
      double root2 = Double.NaN;
      if (a != 0.0) {
        double discriminant = Math.sqrt(b * b - 4.0 * a * c);
        root1 = (-b + discriminant) / (2.0 * a);
        root2 = (-b - discriminant) / (2.0 * a);
      } else if (b != 0.0) {
        root1 = -c / b;
      }
      return new double[] {0.0, 1.0, inside(root1), inside(root2)};
    }

    /** The fraction itself where it lies inside the segment, else its start. */
    private static double inside(double fraction) {
      return fraction > 0.0 && fraction < 1.0 ? fraction : 0.0;
    }
  }
}
