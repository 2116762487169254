package kitstow.planner.statics;

import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;

/**
 * Loads on the left and right wheels of the whole vehicle, by the lever rule on the mean of the two
 * tracks. The empty ute's own centre is taken on the centre plane.
 *
 * @param leftKg left wheels
 * @param rightKg right wheels
 */
public record SideLoads(double leftKg, double rightKg) {
  /** Side loads in a state. */
  public static SideLoads of(Loading loading, LoadState state) {
    long total = 0L;
    long doubledMoment = 0L;
    for (int i = 0; i < state.size(); i++) {
      total += state.massG(i);
      doubledMoment += state.massG(i) * Bodies.doubledCentreYMm(loading, state, i);
    }
    double track =
        (loading.scenario().ute().frontTrackMm() + loading.scenario().ute().rearTrackMm()) / 2.0;
    // R_right = m (1/2 + y / track); moments about the left wheels. [S10]
    double halfKg = total / 2000.0;
    double shiftKg = doubledMoment / (2000.0 * track);
    return new SideLoads(halfKg - shiftKg, halfKg + shiftKg);
  }

  /** Right less left, kilograms. */
  public double differenceKg() {
    return rightKg - leftKg;
  }
}
