package kitstow.planner.geometry;

/**
 * An axis-aligned box in the vehicle frame (x rearward, y right, z up; millimetres). A point mass
 * is a box without extent: its corners coincide.
 *
 * @param minXMm front face
 * @param minYMm left face
 * @param minZMm lower face
 * @param maxXMm rear face, at least {@code minXMm}
 * @param maxYMm right face, at least {@code minYMm}
 * @param maxZMm upper face, at least {@code minZMm}
 */
public record BoxMm(int minXMm, int minYMm, int minZMm, int maxXMm, int maxYMm, int maxZMm) {
  /** Refuses corners in the wrong order. */
  public BoxMm {
    if (maxXMm < minXMm || maxYMm < minYMm || maxZMm < minZMm) {
      throw new IllegalArgumentException(
          "box corners out of order: "
              + minXMm
              + ","
              + minYMm
              + ","
              + minZMm
              + " to "
              + maxXMm
              + ","
              + maxYMm
              + ","
              + maxZMm
              + " mm");
    }
  }

  /** The box of a size whose front, left, lower corner stands at a point. */
  public static BoxMm at(PointMm corner, SizeMm size) {
    return new BoxMm(
        corner.xMm(),
        corner.yMm(),
        corner.zMm(),
        corner.xMm() + size.lengthMm(),
        corner.yMm() + size.widthMm(),
        corner.zMm() + size.heightMm());
  }

  /** A point mass as a box without extent. */
  public static BoxMm point(int xMm, int yMm, int zMm) {
    return new BoxMm(xMm, yMm, zMm, xMm, yMm, zMm);
  }

  /** Extent along x in millimetres. */
  public int lengthMm() {
    return maxXMm - minXMm;
  }

  /** Extent along y in millimetres. */
  public int widthMm() {
    return maxYMm - minYMm;
  }

  /** Extent along z in millimetres. */
  public int heightMm() {
    return maxZMm - minZMm;
  }

  /** Volume in cubic millimetres. */
  public long volumeMm3() {
    return (long) lengthMm() * widthMm() * heightMm();
  }

  /** Front, left, lower corner. */
  public PointMm corner() {
    return new PointMm(minXMm, minYMm, minZMm);
  }

  /** This box moved by an offset. */
  public BoxMm moved(PointMm by) {
    return new BoxMm(
        minXMm + by.xMm(),
        minYMm + by.yMm(),
        minZMm + by.zMm(),
        maxXMm + by.xMm(),
        maxYMm + by.yMm(),
        maxZMm + by.zMm());
  }

  /** The same footprint between two other heights. */
  public BoxMm withHeights(int lowerZMm, int upperZMm) {
    return new BoxMm(minXMm, minYMm, lowerZMm, maxXMm, maxYMm, upperZMm);
  }
}
