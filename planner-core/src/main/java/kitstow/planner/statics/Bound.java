package kitstow.planner.statics;

/**
 * How far a plan can be from the best possible one for the items it places, its modules staying
 * where they are: no such plan has a smaller worst moving rear overhang moment than the floor. The
 * floor pours gear like a liquid as far as it can; the true best is usually nearer the plan.
 *
 * @param floorNm floor of the worst moving moment, newton metres
 * @param momentNm that of the plan
 * @param fixedNm part of it that does not hang on where gear stands, in the plan's worst state
 * @param gearKg mass of the placed gear in that state
 */
public record Bound(double floorNm, double momentNm, double fixedNm, double gearKg) {
  /** Gap as a share of the whole moment, per cent. */
  public double gapPercentOfWhole() {
    return momentNm <= 0.0 ? 0.0 : 100.0 * (momentNm - floorNm) / momentNm;
  }

  /** Gap as a share of what the place of gear can change, per cent. */
  public double gapPercentOfChangeable() {
    double changeable = momentNm - fixedNm;
    return changeable <= 0.0 ? 0.0 : 100.0 * (momentNm - floorNm) / changeable;
  }

  /** Gap in millimetres of mean place of all placed gear. */
  public double gapMm() {
    return gearKg <= 0.0
        ? 0.0
        : (momentNm - floorNm) * 1000.0 / (Lever.STANDARD_GRAVITY_M_S2 * gearKg);
  }
}
