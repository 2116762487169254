package kitstow.planner.statics;

import kitstow.planner.model.Trailer;
import kitstow.planner.model.Ute;
import kitstow.planner.model.VehiclePointMm;

/**
 * What the ball mass of a trailer does to the axles of the ute: more than itself on the rear axle,
 * since the ball lies behind it, and so less on the front axle.
 *
 * @param ballKg ball mass
 * @param behindRearAxleMm how far the ball lies behind the rear axle
 * @param rearKg what it adds to the rear axle
 * @param frontKg what it adds to the front axle, below zero behind the rear axle
 */
public record BallOnAxles(double ballKg, int behindRearAxleMm, double rearKg, double frontKg) {
  /** Shares of a trailer's ball mass at a ball. */
  public static BallOnAxles of(Ute ute, VehiclePointMm ball, Trailer trailer) {
    long ballG = trailer.ball().massG();
    long doubledXMm = 2L * ball.xMm();
    double scale = 2000.0 * ute.wheelbaseMm();
    return new BallOnAxles(
        ballG / 1000.0,
        ball.xMm() - ute.wheelbaseMm(),
        Lever.rearHalfGMm(ballG, doubledXMm) / scale,
        Lever.frontHalfGMm(ballG, doubledXMm, ute.wheelbaseMm()) / scale);
  }
}
