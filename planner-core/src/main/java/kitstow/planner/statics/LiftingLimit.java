package kitstow.planner.statics;

/**
 * How much one person should lift by the revised lifting equation of 1991: 23 kg in the best
 * posture, times a ratio for each thing that is worse than best. Two hands, standing, seldom, with
 * a good grip; no law and no measure of strength.
 */
public final class LiftingLimit {
  /** Recommended mass in the best posture. [S112] */
  private static final double BEST_KG = 23.0;

  private LiftingLimit() {}

  /**
   * Ratio for how far the hands are ahead of the ankles.
   *
   * @param horizontalMm ankles to hands
   */
  public static double horizontalRatio(int horizontalMm) {
    // HM = 25 / H, H in cm, at least 25; nothing beyond 63 cm (that bound from memory). [S112]
    if (horizontalMm > 630) {
      return 0.0;
    }
    return 250.0 / Math.max(250, horizontalMm);
  }

  /**
   * Ratio for the height of the hands.
   *
   * @param heightMm ground to hands
   */
  public static double heightRatio(int heightMm) {
    // VM = 1 - 0.003 |V - 75|, V in cm; nothing above 175 cm. [S112, S113]
    return heightMm > 1750 ? 0.0 : 1.0 - 0.0003 * Math.abs(heightMm - 750);
  }

  /**
   * Ratio for how far up or down it goes.
   *
   * @param travelMm lowest to highest place of the hands
   */
  public static double travelRatio(int travelMm) {
    // DM = 0.82 + 4.5 / D, D in cm, at least 25; nothing beyond 175 cm (from memory). [S112]
    if (travelMm > 1750) {
      return 0.0;
    }
    return 0.82 + 45.0 / Math.max(250, travelMm);
  }

  /**
   * Ratio for turning the trunk.
   *
   * @param degrees angle to the side
   */
  public static double turnRatio(double degrees) {
    // AM = 1 - 0.0032 A (from memory; the table of [S113] agrees).
    return degrees > 135.0 ? 0.0 : 1.0 - 0.0032 * degrees;
  }

  /** Recommended mass in kilograms for these ratios. */
  public static double kg(double... ratios) {
    double kg = BEST_KG;
    for (double ratio : ratios) {
      kg *= ratio;
    }
    return kg;
  }
}
