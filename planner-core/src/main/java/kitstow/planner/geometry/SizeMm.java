package kitstow.planner.geometry;

/**
 * Outside or inside size of a box in millimetres: length along x, width along y, height along z.
 *
 * @param lengthMm along x, above zero
 * @param widthMm along y, above zero
 * @param heightMm along z, above zero
 */
public record SizeMm(int lengthMm, int widthMm, int heightMm) {
  /** Refuses a size that is not above zero in every direction. */
  public SizeMm {
    if (lengthMm <= 0 || widthMm <= 0 || heightMm <= 0) {
      throw new IllegalArgumentException(
          "size must be above zero: " + lengthMm + " x " + widthMm + " x " + heightMm + " mm");
    }
  }

  /** Volume in cubic millimetres. */
  public long volumeMm3() {
    return (long) lengthMm * widthMm * heightMm;
  }
}
