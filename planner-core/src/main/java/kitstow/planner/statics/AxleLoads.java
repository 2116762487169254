package kitstow.planner.statics;

import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;

/**
 * Axle loads of the ute in one state: a rigid vehicle on two axles, level ground, at rest. A mass
 * behind the rear axle takes load off the front one; a negative front load means that it would
 * lift.
 *
 * @param totalG mass of the ute with all aboard and the ball mass, grams
 * @param rearHalfGMm rear axle load times twice the wheelbase, exact
 * @param wheelbaseMm wheelbase
 */
public record AxleLoads(long totalG, long rearHalfGMm, int wheelbaseMm) {
  /** Axle loads in a state. */
  public static AxleLoads of(Loading loading, LoadState state) {
    long total = 0L;
    long rear = 0L;
    for (int i = 0; i < state.size(); i++) {
      long massG = state.massG(i);
      if (massG != 0L) {
        total += massG;
        rear += Lever.rearHalfGMm(massG, Bodies.doubledCentreXMm(loading, state, i));
      }
    }
    return new AxleLoads(total, rear, loading.scenario().ute().wheelbaseMm());
  }

  /** Total in kilograms. */
  public double totalKg() {
    return totalG / 1000.0;
  }

  /** Rear axle load in kilograms. */
  public double rearKg() {
    return rearHalfGMm / (2000.0 * wheelbaseMm);
  }

  /** Front axle load in kilograms. */
  public double frontKg() {
    return (2L * wheelbaseMm * totalG - rearHalfGMm) / (2000.0 * wheelbaseMm);
  }

  /** Share of the total on the front axle, 0 to 1 when nothing lifts. */
  public double frontShareRatio() {
    return totalG == 0L ? 0.0 : frontKg() / totalKg();
  }
}
