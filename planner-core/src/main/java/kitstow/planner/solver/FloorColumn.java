package kitstow.planner.solver;

import java.util.Arrays;
import kitstow.planner.geometry.MeanReach;
import kitstow.planner.geometry.SizeMm;

/**
 * One way in which an item can stand in one space: how long it is and what share of the section it
 * takes, with every place along the space at which its priced cost can be least. Between two such
 * places the cost is linear, or a parabola where the item straddles the rear axle line.
 */
final class FloorColumn {
  private final FloorSpace space;
  private final int lengthMm;
  private final double[] share;
  private final double[] at;

  /**
   * A way to stand.
   *
   * @param size as it stands
   * @param alone whether nothing may be above it
   */
  FloorColumn(FloorSpace space, SizeMm size, boolean alone) {
    this.space = space;
    this.lengthMm = size.lengthMm();
    this.share = new double[FloorFamily.COUNT];
    for (int k = 0; k < share.length; k++) {
      share[k] =
          FloorFamily.share(
              k, size.widthMm(), space.widthMm(), size.heightMm(), space.heightMm(), alone);
    }
    this.at = places();
  }

  private double[] places() {
    double first = space.fromMm();
    double last = space.toMm() - lengthMm;
    double[] found = new double[2 * space.slices() + 6];
    int count = 0;
    found[count++] = first;
    found[count++] = Math.max(first, last);
    for (int slice = 0; slice <= space.slices(); slice++) {
      double edge = space.fromMm() + slice * space.sliceMm();
      count = addIf(found, count, edge, first, last);
      count = addIf(found, count, edge - lengthMm, first, last);
    }
    count = addIf(found, count, 0.0, first, last);
    count = addIf(found, count, -lengthMm, first, last);
    double[] sorted = Arrays.copyOf(found, count);
    Arrays.sort(sorted);
    return sorted;
  }

  private static int addIf(double[] found, int count, double x, double first, double last) {
    if (x > first && x < last) {
      found[count] = x;
      return count + 1;
    }
    return count;
  }

  /** Whether another way takes no more of anything, in the same space and length. */
  boolean dominatedBy(FloorColumn other) {
    if (other.space != space || other.lengthMm != lengthMm) {
      return false;
    }
    for (int k = 0; k < share.length; k++) {
      if (other.share[k] > share[k]) {
        return false;
      }
    }
    return true;
  }

  FloorSpace space() {
    return space;
  }

  int lengthMm() {
    return lengthMm;
  }

  double share(int family) {
    return share[family];
  }

  /** Least cost and where it is. */
  record Least(double cost, double atMm) {}

  /**
   * The place of least priced cost.
   *
   * @param massKg mass of the item
   * @param density scratch of at least as many slices as the space has
   */
  Least least(double massKg, double[] density, double[] sums) {
    int slices = space.slices();
    sums[0] = 0.0;
    for (int t = 0; t < slices; t++) {
      double mixed = 0.0;
      for (int k = 0; k < share.length; k++) {
        mixed += share[k] * space.price(k, t);
      }
      density[t] = mixed;
      sums[t + 1] = sums[t] + mixed * space.sliceMm();
    }
    double best = Double.POSITIVE_INFINITY;
    double bestAt = at[0];
    double before = at[0];
    for (int i = 0; i < at.length; i++) {
      double a = at[i];
      double cost = cost(a, massKg, sums);
      if (cost < best) {
        best = cost;
        bestAt = a;
      }
      if (i > 0 && a > before && a > -lengthMm && before < 0.0) {
        // d/da of m (a + l)^2 / (2 l) plus prices is zero at a = -l - slope l / m.
        double slope =
            densityAt((before + a) / 2.0 + lengthMm, density)
                - densityAt((before + a) / 2.0, density);
        double flat = -lengthMm - slope * lengthMm / massKg;
        if (flat > before && flat < a) {
          double there = cost(flat, massKg, sums);
          if (there < best) {
            best = there;
            bestAt = flat;
          }
        }
      }
      before = a;
    }
    return new Least(best + space.perKg() * massKg, bestAt);
  }

  private double cost(double a, double massKg, double[] sums) {
    return massKg * MeanReach.behindMm(a, lengthMm)
        + space.upTo(a + lengthMm, sums)
        - space.upTo(a, sums);
  }

  private double densityAt(double x, double[] density) {
    return density[space.sliceOf(x)];
  }

  /** Adds what an item takes of every slice from a place on. */
  void use(double a, double weight, double[][] used) {
    double end = a + lengthMm;
    for (int t = space.sliceOf(a); t <= space.sliceOf(end); t++) {
      double from = space.fromMm() + t * space.sliceMm();
      double cut = Math.min(end, from + space.sliceMm()) - Math.max(a, from);
      if (cut > 0.0) {
        for (int k = 0; k < share.length; k++) {
          used[k][t] += weight * share[k] * cut;
        }
      }
    }
  }
}
