package kitstow.planner.geometry;

/** How far behind a line across the vehicle something lies on average. */
public final class MeanReach {
  private MeanReach() {}

  /**
   * Mean of {@code max(0, x)} over a body from {@code x = fromMm} to {@code fromMm + lengthMm}:
   * what lies ahead of the line counts as on it.
   *
   * @param fromMm front end of the body, millimetres behind the line; negative ahead of it
   * @param lengthMm length of the body, millimetres, above zero
   */
  public static double behindMm(double fromMm, double lengthMm) {
    double toMm = fromMm + lengthMm;
    if (fromMm >= 0.0) {
      return fromMm + lengthMm / 2.0;
    }
    // (1/l) * integral of x dx from 0 to the rear end. [S28, S125]
    return toMm <= 0.0 ? 0.0 : toMm * toMm / (2.0 * lengthMm);
  }
}
