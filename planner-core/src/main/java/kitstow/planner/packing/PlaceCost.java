package kitstow.planner.packing;

import kitstow.planner.geometry.BoxMm;

/**
 * What a place costs, in millimetres of mean reach behind the rear axle: forward and low first;
 * what lies ahead of the axle costs little, and the last term only breaks ties.
 */
final class PlaceCost {
  /** What a millimetre of height costs against one of mean reach behind the rear axle. */
  private static final double HEIGHT_COST = 0.25;

  /** What a millimetre rearward costs where all of it lies ahead of the rear axle. */
  private static final double AHEAD_COST = 0.02;

  private static final double ACROSS_COST = 0.001;

  private final int rearAxleXMm;

  PlaceCost(int rearAxleXMm) {
    this.rearAxleXMm = rearAxleXMm;
  }

  double of(int minX, int maxX, int minY, int minZ, BoxMm space) {
    double a = (double) minX - rearAxleXMm;
    double b = (double) maxX - rearAxleXMm;
    double behind = a >= 0.0 ? (a + b) / 2.0 : b <= 0.0 ? 0.0 : b * b / (2.0 * (b - a));
    return behind
        + HEIGHT_COST * (minZ - space.minZMm())
        + AHEAD_COST * (minX - space.minXMm())
        + ACROSS_COST * (minY - space.minYMm());
  }
}
