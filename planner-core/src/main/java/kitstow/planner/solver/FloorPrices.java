package kitstow.planner.solver;

import java.util.List;

/** Prices as they were at one moment, to step from. */
final class FloorPrices {
  /** A kilogram beyond a rating counts as much as so many millimetres of section. */
  private static final double MM_PER_KG = 10.0;

  private final List<FloorSpace> spaces;
  private final double[][][] price;
  private final double[] ratingPrice;

  /** Takes down the prices as they are. */
  FloorPrices(List<FloorSpace> spaces) {
    this.spaces = spaces;
    this.price = new double[spaces.size()][FloorFamily.COUNT][];
    this.ratingPrice = new double[spaces.size()];
    for (int s = 0; s < price.length; s++) {
      FloorSpace space = spaces.get(s);
      ratingPrice[s] = space.ratingPrice();
      for (int k = 0; k < FloorFamily.COUNT; k++) {
        price[s][k] = new double[space.slices()];
        for (int t = 0; t < space.slices(); t++) {
          price[s][k][t] = space.price(k, t);
        }
      }
    }
  }

  /**
   * Sets the prices of the spaces to these, moved along the excess of a use; none falls below zero.
   *
   * @param gain rise of the floor that the step is sized for, kilogram millimetres
   */
  void step(FloorUse use, double gain) {
    double norm = 0.0;
    for (int s = 0; s < price.length; s++) {
      for (int k = 0; k < FloorFamily.COUNT; k++) {
        for (int t = 0; t < price[s][k].length; t++) {
          double excess = use.excess(s, k, t);
          if (excess > 0.0 || price[s][k][t] > 0.0) {
            norm += excess * excess;
          }
        }
      }
      double kg = use.excessKg(s) * MM_PER_KG;
      if (kg > 0.0 || ratingPrice[s] > 0.0) {
        norm += kg * kg;
      }
    }
    double step = norm > 0.0 ? gain / norm : 0.0;
    for (int s = 0; s < price.length; s++) {
      FloorSpace space = spaces.get(s);
      for (int k = 0; k < FloorFamily.COUNT; k++) {
        for (int t = 0; t < price[s][k].length; t++) {
          space.price(k, t, Math.max(0.0, price[s][k][t] + step * use.excess(s, k, t)));
        }
      }
      double kgStep = step * use.excessKg(s) * MM_PER_KG * MM_PER_KG;
      space.ratingPrice(Math.max(0.0, ratingPrice[s] + kgStep));
    }
  }
}
