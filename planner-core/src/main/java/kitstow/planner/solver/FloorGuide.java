package kitstow.planner.solver;

import java.util.List;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.MeanReach;
import kitstow.planner.model.PlacedItem;

/**
 * What places cost at the prices of a floor: room and rating that many things want are dear, so a
 * thing that gains little by them leaves them to one that gains more. Says which of two spaces a
 * thing had better take; no plan is judged by it.
 */
final class FloorGuide {
  private final List<FloorSpace> spaces;
  private final int rearAxleXMm;

  /** Price of a family up to the front of each slice, by space and family. */
  private final double[][][] upTo;

  /**
   * A guide.
   *
   * @param spaces with the prices on them
   */
  FloorGuide(List<FloorSpace> spaces, int rearAxleXMm) {
    this.spaces = spaces;
    this.rearAxleXMm = rearAxleXMm;
    this.upTo = new double[spaces.size()][FloorFamily.COUNT][];
    for (int s = 0; s < upTo.length; s++) {
      FloorSpace space = spaces.get(s);
      for (int k = 0; k < FloorFamily.COUNT; k++) {
        double[] sums = new double[space.slices() + 1];
        for (int t = 0; t < space.slices(); t++) {
          sums[t + 1] = sums[t] + space.price(k, t) * space.sliceMm();
        }
        upTo[s][k] = sums;
      }
    }
  }

  /** What a place costs, kilogram millimetres. */
  double costKgMm(PlacedItem item, int site) {
    FloorSpace space = spaces.get(site);
    BoxMm box = item.box();
    double massKg = item.item().mass().massG() / 1000.0;
    double from = (double) box.minXMm() - rearAxleXMm;
    double cost = massKg * (MeanReach.behindMm(from, box.lengthMm()) + space.perKg());
    boolean alone = item.item().bearsG() == 0L;
    for (int k = 0; k < FloorFamily.COUNT; k++) {
      double[] sums = upTo[site][k];
      double price = space.upTo(from + box.lengthMm(), sums) - space.upTo(from, sums);
      if (price > 0.0) {
        cost +=
            price
                * FloorFamily.share(
                    k, box.widthMm(), space.widthMm(), box.heightMm(), space.heightMm(), alone);
      }
    }
    return cost;
  }
}
