package kitstow.planner.statics;

/**
 * How far body and load may reach behind the rear axle where a rule of 60 % of the wheelbase
 * applies. Light-vehicle law differs by state; this is a figure to compare with.
 */
public final class RearOverhangLimit {
  /** Australia caps the 60 % at 3.7 m. [S30] */
  public static final int AUSTRALIAN_CAP_MM = 3700;

  private RearOverhangLimit() {}

  /** 60 % of the wheelbase in whole millimetres, rounded down (UK guide, [S33]). */
  public static int sixtyPercentMm(int wheelbaseMm) {
    return (int) (wheelbaseMm * 600L / 1000L);
  }

  /** The lesser of 60 % of the wheelbase and 3.7 m (National Heavy Vehicle Regulator, [S30]). */
  public static int australianMm(int wheelbaseMm) {
    return Math.min(AUSTRALIAN_CAP_MM, sixtyPercentMm(wheelbaseMm));
  }
}
