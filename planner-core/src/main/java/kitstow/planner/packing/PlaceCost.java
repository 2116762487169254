package kitstow.planner.packing;

import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.MeanReach;

/**
 * What a place costs, in millimetres of mean reach behind the rear axle: forward and low first;
 * what lies ahead of the axle costs little, and the last term only breaks ties.
 */
final class PlaceCost {
  /** What a millimetre of height costs against one of mean reach behind the rear axle. */
  private static final double HEIGHT_COST = 0.25;

  /** The same for what goes rather on top of others than further back. */
  private static final double STACKED_HEIGHT_COST = 0.02;

  /** What a millimetre rearward costs where all of it lies ahead of the rear axle. */
  private static final double AHEAD_COST = 0.02;

  private static final double ACROSS_COST = 0.001;

  private final int rearAxleXMm;
  private final double heightCost;

  PlaceCost(int rearAxleXMm, boolean stacked) {
    this.rearAxleXMm = rearAxleXMm;
    this.heightCost = stacked ? STACKED_HEIGHT_COST : HEIGHT_COST;
  }

  double of(int minX, int maxX, int minY, int minZ, BoxMm space) {
    return MeanReach.behindMm((double) minX - rearAxleXMm, (double) maxX - minX)
        + heightCost * (minZ - space.minZMm())
        + AHEAD_COST * (minX - space.minXMm())
        + ACROSS_COST * (minY - space.minYMm());
  }
}
