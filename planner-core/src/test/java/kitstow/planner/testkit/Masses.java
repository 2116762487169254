package kitstow.planner.testkit;

import kitstow.planner.model.KnownMass;
import kitstow.planner.model.MassSource;
import kitstow.planner.model.Ratings;

/** Masses and ratings from plain numbers. */
public final class Masses {
  private Masses() {}

  /** Kilograms in grams. */
  public static long kg(long kg) {
    return 1000L * kg;
  }

  /** A mass that was weighed and is known exactly. */
  public static KnownMass weighed(long massG) {
    return weighed(massG, 0L);
  }

  /** A mass that was weighed, and by how much it may be off. */
  public static KnownMass weighed(long massG, long toleranceG) {
    return new KnownMass(massG, MassSource.WEIGHED, toleranceG);
  }

  /** Ratings given one by one: parked, on the road, off the road. */
  public static Ratings ratings(long staticG, long roadG, long offRoadG) {
    return new Ratings(staticG, roadG, offRoadG, /* derived= */ false);
  }

  /** The same rating whatever happens. */
  public static Ratings always(long massG) {
    return ratings(massG, massG, massG);
  }
}
