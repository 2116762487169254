package kitstow.planner.trip;

import kitstow.planner.geometry.BoxMm;
import kitstow.planner.model.Tank;
import kitstow.planner.model.Ute;

/** Adds up masses on two axles; exact until it is read, and rounded to a gram only then. */
final class AxleSum {
  private final int wheelbaseMm;
  private double totalG;
  private double momentGMm;

  AxleSum(int wheelbaseMm) {
    this.wheelbaseMm = wheelbaseMm;
  }

  /** The axle loads of a ute as they were read or weighed. */
  static AxleSum measured(Ute ute) {
    AxleSum sum = new AxleSum(ute.wheelbaseMm());
    sum.add(ute.empty().front().massG(), 0.0);
    sum.add(ute.empty().rear().massG(), ute.wheelbaseMm());
    return sum;
  }

  /** Adds a mass at a place behind the front axle; a negative mass takes it away. */
  void add(long massG, double xMm) {
    totalG += massG;
    momentGMm += massG * xMm;
  }

  /** Adds a liquid; its centre does not move lengthwise with its level. */
  void add(long contentMl, Tank tank) {
    // The frame of the ute is the vehicle frame.
    double xMm = tank.box().aMm() + tank.box().size().lengthMm() / 2.0;
    double massG = contentMl * tank.densityGPerL() / 1000.0;
    totalG += massG;
    momentGMm += massG * xMm;
  }

  static double centreXMm(BoxMm box) {
    return (box.minXMm() + box.maxXMm()) / 2.0;
  }

  /** Load on the rear axle, half a gram rounded up. */
  long rearG() {
    // R_rear = sum(m x) / wheelbase; moments about the front axle. [S10]
    return Math.round(momentGMm / wheelbaseMm);
  }

  /** Load on the front axle: what the rear axle does not carry. */
  long frontG() {
    return Math.round(totalG) - rearG();
  }
}
