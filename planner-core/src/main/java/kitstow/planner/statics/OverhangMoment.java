package kitstow.planner.statics;

import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;

/**
 * Rear overhang moment: what chassis, tray and body together carry across a cut at the rear axle
 * line if the axle held the frame at that one point. An index to compare plans with, not the
 * frame's bending moment: leaf springs hold the frame at two hangers, which shifts it by several
 * kN.m. The ute's own empty mass is left out, since its spread is unknown.
 *
 * @param halfGMm gram half-millimetres
 */
public record OverhangMoment(long halfGMm) {
  /** Moment in a state. */
  public static OverhangMoment of(Loading loading, LoadState state) {
    long rearAxle = loading.scenario().ute().wheelbaseMm();
    long sum = 0L;
    for (int i = 0; i < state.size(); i++) {
      if (state.massG(i) != 0L && loading.bodies().get(i).inOverhang()) {
        sum +=
            Lever.overhangHalfGMm(
                state.massG(i),
                Bodies.minXMm(loading, state, i),
                Bodies.maxXMm(loading, state, i),
                rearAxle);
      }
    }
    return new OverhangMoment(sum);
  }

  /** Newton metres at standard gravity. */
  public double newtonMetres() {
    return Lever.newtonMetres(halfGMm, Lever.STANDARD_GRAVITY_M_S2);
  }

  /** Kilogram metres. */
  public double kilogramMetres() {
    return Lever.kilogramMetres(halfGMm);
  }

  /** Kilograms it lifts off the front axle: M / (g * wheelbase). */
  public double liftedOffFrontKg(int wheelbaseMm) {
    // R_f = -P a / WB for a load at a behind the rear axle. [S28]
    return kilogramMetres() * 1000.0 / wheelbaseMm;
  }
}
