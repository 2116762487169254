package kitstow.planner.geometry;

/** A point or offset in millimetres in a frame that the owner of the point names. */
public record PointMm(int xMm, int yMm, int zMm) {
  /** No offset. */
  public static final PointMm ZERO = new PointMm(0, 0, 0);
}
