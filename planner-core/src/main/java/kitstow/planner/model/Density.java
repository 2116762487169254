package kitstow.planner.model;

import kitstow.planner.geometry.SizeMm;

/** Whether a thing can weigh what is said of it. */
public final class Density {
  /** Lead weighs 11.34 kg a litre (handbook value, from memory); no gear is denser. */
  private static final double LEAD_G_PER_MM3 = 0.01134;

  private Density() {}

  /** Whether a mass in grams is more than a box of lead of that size would weigh. */
  public static boolean isBeyondLead(long massG, SizeMm size) {
    return massG > LEAD_G_PER_MM3 * size.volumeMm3();
  }
}
