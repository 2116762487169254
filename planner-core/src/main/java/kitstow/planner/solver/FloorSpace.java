package kitstow.planner.solver;

import kitstow.planner.geometry.BoxMm;

/**
 * One space of the floor: cut into equal slices along the vehicle, with a price for every family of
 * section shares in every slice and one for its rating. x counts from the rear axle line.
 */
final class FloorSpace {
  private static final double SLICE_MM = 50.0;

  private final double fromMm;
  private final double sliceMm;
  private final int slices;
  private final int widthMm;
  private final int heightMm;
  private final double ratingKg;
  private final double[][] price;
  private double ratingPrice;

  /**
   * A space.
   *
   * @param room with what may project, vehicle frame
   * @param ratingKg rating in the state, infinite where there is none
   */
  FloorSpace(BoxMm room, int rearAxleXMm, double ratingKg) {
    this.fromMm = (double) room.minXMm() - rearAxleXMm;
    this.slices = Math.max(1, (int) Math.ceil(room.lengthMm() / SLICE_MM));
    this.sliceMm = (double) room.lengthMm() / slices;
    this.widthMm = room.widthMm();
    this.heightMm = room.heightMm();
    this.ratingKg = ratingKg;
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

  double ratingKg() {
    return ratingKg;
  }

  boolean rated() {
    return ratingKg < Double.POSITIVE_INFINITY;
  }

  double price(int family, int slice) {
    return price[family][slice];
  }

  void price(int family, int slice, double value) {
    price[family][slice] = value;
  }

  double ratingPrice() {
    return ratingPrice;
  }

  void ratingPrice(double value) {
    ratingPrice = value;
  }

  /** What all capacity of the space costs at its prices. */
  double capacityCost() {
    double sum = 0.0;
    for (double[] family : price) {
      for (double one : family) {
        sum += one * sliceMm;
      }
    }
    return rated() ? sum + ratingPrice * ratingKg : sum;
  }
}
