package kitstow.planner.model;

/**
 * A mass and how well it is known.
 *
 * @param massG grams, zero or more
 * @param source where the figure comes from
 * @param toleranceG 95 % half width in grams, zero or more
 */
public record KnownMass(long massG, MassSource source, long toleranceG) {
  /** Nothing, known exactly. */
  public static final KnownMass NONE = new KnownMass(0L, MassSource.WEIGHED, 0L);

  /** Refuses negative masses and tolerances. */
  public KnownMass {
    if (massG < 0L || toleranceG < 0L) {
      throw new IllegalArgumentException(
          "mass and tolerance must not be negative: " + massG + " g, " + toleranceG + " g");
    }
  }
}
