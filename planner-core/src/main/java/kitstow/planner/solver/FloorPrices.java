package kitstow.planner.solver;

import java.util.List;

/** Prices as they were at one moment, to step from. */
final class FloorPrices {
  /** A kilogram beyond a limit counts as much as so many millimetres of section. */
  private static final double MM_PER_KG = 10.0;

  private final List<FloorSpace> spaces;
  private final FloorLimits limits;
  private final double[][][] price;
  private final double[] limitPrice;

  /** All prices zero. */
  FloorPrices(List<FloorSpace> spaces, FloorLimits limits) {
    this.spaces = spaces;
    this.limits = limits;
    this.price = new double[spaces.size()][FloorFamily.COUNT][];
    this.limitPrice = new double[limits.count()];
    for (int s = 0; s < price.length; s++) {
      for (int k = 0; k < FloorFamily.COUNT; k++) {
        price[s][k] = new double[spaces.get(s).slices()];
      }
    }
  }

  /** Puts these prices on the spaces. */
  void post() {
    double[] perKg = limits.perKg(limitPrice);
    for (int s = 0; s < price.length; s++) {
      FloorSpace space = spaces.get(s);
      space.perKg(perKg[s]);
      for (int k = 0; k < FloorFamily.COUNT; k++) {
        for (int t = 0; t < price[s][k].length; t++) {
          space.price(k, t, price[s][k][t]);
        }
      }
    }
  }

  /** What all capacity costs. */
  double capacityCost() {
    double sum = 0.0;
    for (FloorSpace space : spaces) {
      sum += space.capacityCost();
    }
    for (int l = 0; l < limitPrice.length; l++) {
      sum += limitPrice[l] * limits.capacityKg(l);
    }
    return sum;
  }

  /**
   * These prices moved along the excess of a use; none falls below zero.
   *
   * @param gain rise of the floor that the step is sized for, kilogram millimetres
   * @param used families that are used
   */
  FloorPrices step(FloorUse use, double gain, boolean[] used) {
    double norm = 0.0;
    for (int s = 0; s < price.length; s++) {
      for (int k = 0; k < FloorFamily.COUNT; k++) {
        for (int t = 0; used[k] && t < price[s][k].length; t++) {
          norm += square(use.excess(s, k, t), price[s][k][t]);
        }
      }
    }
    for (int l = 0; l < limitPrice.length; l++) {
      norm += square(use.excessKg(limits, l) * MM_PER_KG, limitPrice[l]);
    }
    double step = norm > 0.0 ? gain / norm : 0.0;
    FloorPrices next = new FloorPrices(spaces, limits);
    for (int s = 0; s < price.length; s++) {
      for (int k = 0; k < FloorFamily.COUNT; k++) {
        for (int t = 0; used[k] && t < price[s][k].length; t++) {
          next.price[s][k][t] = Math.max(0.0, price[s][k][t] + step * use.excess(s, k, t));
        }
      }
    }
    for (int l = 0; l < limitPrice.length; l++) {
      double move = step * use.excessKg(limits, l) * MM_PER_KG * MM_PER_KG;
      next.limitPrice[l] = Math.max(0.0, limitPrice[l] + move);
    }
    return next;
  }

  /** A price of zero does not fall, so what is left over there does not count. */
  private static double square(double excess, double price) {
    return excess > 0.0 || price > 0.0 ? excess * excess : 0.0;
  }
}
