package kitstow.planner.catalogue;

/**
 * What a figure may be.
 *
 * @param min lowest
 * @param max highest
 * @param basis what the range rests on
 */
record Range(double min, double max, String basis) {
  /** Room for binary fractions of figures that files hold in decimals. */
  private static final double ROUNDING = 1e-9;

  static Range exactly(double value, String basis) {
    return new Range(value, value, basis);
  }

  boolean holds(double value) {
    return value >= min - ROUNDING && value <= max + ROUNDING;
  }
}
