package kitstow.planner.statics;

import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;

/**
 * Centre of mass of everything the ute carries in one state, vehicle frame. The height is only as
 * good as the empty ute's own height.
 *
 * @param xMm behind the front axle
 * @param yMm to the right of the centre plane
 * @param zMm above the ground
 */
public record CentreOfMass(double xMm, double yMm, double zMm) {
  /** Centre of mass in a state; at the origin when nothing has mass. */
  public static CentreOfMass of(Loading loading, LoadState state) {
    double[] massKg = new double[state.size()];
    double[] x = new double[state.size()];
    double[] y = new double[state.size()];
    double[] z = new double[state.size()];
    for (int i = 0; i < state.size(); i++) {
      massKg[i] = state.massG(i) / 1000.0;
      x[i] = Bodies.doubledCentreXMm(loading, state, i) / 2.0;
      y[i] = Bodies.doubledCentreYMm(loading, state, i) / 2.0;
      z[i] = Bodies.centreZMm(loading, state, i);
    }
    return new CentreOfMass(mean(massKg, x), mean(massKg, y), mean(massKg, z));
  }

  /**
   * Mean arm of masses: {@code sum(m x) / sum(m)}, in the unit of the arms.
   *
   * @param mass masses in any one unit
   * @param arm their arms in any one unit, as many
   */
  public static double mean(double[] mass, double[] arm) {
    // CG = sum(m x) / sum(m). [S1, S3]
    double total = 0.0;
    double moment = 0.0;
    for (int i = 0; i < mass.length; i++) {
      total += mass[i];
      moment += mass[i] * arm[i];
    }
    return total == 0.0 ? 0.0 : moment / total;
  }
}
