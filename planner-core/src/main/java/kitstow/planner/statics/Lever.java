package kitstow.planner.statics;

/**
 * The lever formulae, on whole grams and millimetres. A centre is handed over doubled (smallest
 * plus largest x of the body) so that it stays whole; results are in gram half-millimetres.
 */
public final class Lever {
  /** Standard gravity in m/s2 (ISO 80000-3; value from memory, the conventional one of 1901). */
  public static final double STANDARD_GRAVITY_M_S2 = 9.80665;

  /** Gram half-millimetres in one kilogram metre. */
  private static final double HALF_G_MM_PER_KG_M = 2.0e6;

  private Lever() {}

  /**
   * Share of a mass on the rear axle, times wheelbase: {@code m * 2c}. Negative x unloads the axle.
   *
   * @param massG grams
   * @param doubledCentreXMm doubled x of the mass centre behind the front axle
   */
  public static long rearHalfGMm(long massG, long doubledCentreXMm) {
    // R_rear = m x / wheelbase; moments about the front axle. [S10, S11; S28 behind the axle]
    return massG * doubledCentreXMm;
  }

  /** Share of a mass on the front axle, times wheelbase: what the rear axle does not carry. */
  public static long frontHalfGMm(long massG, long doubledCentreXMm, int wheelbaseMm) {
    // R_front = m - R_rear. [S10]
    return massG * (2L * wheelbaseMm - doubledCentreXMm);
  }

  /**
   * Moment of a mass about the rear axle line, only as far as it lies behind it, in gram
   * half-millimetres: {@code m * mean(max(0, x - X))} over the body's own length. A body across the
   * line counts with the part behind it; that one division is rounded up, here and nowhere else.
   *
   * @param massG grams, spread evenly from {@code minXMm} to {@code maxXMm}
   * @param minXMm front end of the body
   * @param maxXMm rear end of the body; equal to the front end for a point
   * @param rearAxleXMm rear axle line
   */
  public static long overhangHalfGMm(long massG, long minXMm, long maxXMm, long rearAxleXMm) {
    // M_B = P a of a load behind a support; a spread load by its integral. [S28, S125]
    long ahead = minXMm - rearAxleXMm;
    long behind = maxXMm - rearAxleXMm;
    if (behind <= 0L || massG == 0L) {
      return 0L;
    }
    if (ahead >= 0L) {
      return massG * (ahead + behind);
    }
    // (1/l) * integral of s ds from 0 to b = b^2 / (2 l); doubled here, so b^2 / l.
    long length = behind - ahead;
    long numerator = massG * behind * behind;
    return (numerator + length - 1L) / length;
  }

  /** A moment in newton metres. */
  public static double newtonMetres(long halfGMm, double gravityMS2) {
    return halfGMm / HALF_G_MM_PER_KG_M * gravityMS2;
  }

  /** A moment in kilogram metres. */
  public static double kilogramMetres(long halfGMm) {
    return halfGMm / HALF_G_MM_PER_KG_M;
  }
}
