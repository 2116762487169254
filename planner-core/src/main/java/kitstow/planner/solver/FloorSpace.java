package kitstow.planner.solver;

import kitstow.planner.geometry.BoxMm;

/**
 * One space of the floor: cut into equal slices along the vehicle, with a price for every family of
 * section shares in every slice and one for a kilogram. x counts from the rear axle line.
 */
final class FloorSpace {
  private static final double SLICE_MM = 50.0;

  private final double fromMm;
  private final double sliceMm;
  private final int slices;
  private final int widthMm;
  private final int heightMm;
  private final double[][] price;
  private final int index;
  private double perKg;

  /**
   * A space.
   *
   * @param index its index among all
   * @param room with what may project, vehicle frame
   */
  FloorSpace(int index, BoxMm room, int rearAxleXMm) {
    this.index = index;
    this.fromMm = (double) room.minXMm() - rearAxleXMm;
    this.slices = Math.max(1, (int) Math.ceil(room.lengthMm() / SLICE_MM));
    this.sliceMm = (double) room.lengthMm() / slices;
    this.widthMm = room.widthMm();
    this.heightMm = room.heightMm();
    this.price = new double[FloorFamily.COUNT][slices];
  }

  double fromMm() {
    return fromMm;
  }

  double toMm() {
    return fromMm + slices * sliceMm;
  }

  double sliceMm() {
    return sliceMm;
  }

  int slices() {
    return slices;
  }

  int widthMm() {
    return widthMm;
  }

  int heightMm() {
    return heightMm;
  }

  int index() {
    return index;
  }

  double price(int family, int slice) {
    return price[family][slice];
  }

  void price(int family, int slice, double value) {
    price[family][slice] = value;
  }

  /** What a kilogram costs here for the sake of mass limits. */
  double perKg() {
    return perKg;
  }

  void perKg(double value) {
    perKg = value;
  }

  /** The slice in which a place lies; before the first and past the last one these. */
  int sliceOf(double x) {
    return clamped((x - fromMm) / sliceMm);
  }

  /**
   * A sum from the front of the space to a place, linear within a slice.
   *
   * @param sums the sum up to the front of each slice, and to the end of the last
   */
  double upTo(double x, double[] sums) {
    double at = (x - fromMm) / sliceMm;
    int slice = clamped(at);
    return sums[slice] + (sums[slice + 1] - sums[slice]) * (at - slice);
  }

  private int clamped(double slice) {
    return Math.max(0, Math.min(slices - 1, (int) slice));
  }

  /** What all sections of the space cost at its prices. */
  double capacityCost() {
    double sum = 0.0;
    for (double[] family : price) {
      for (double one : family) {
        sum += one * sliceMm;
      }
    }
    return sum;
  }
}
