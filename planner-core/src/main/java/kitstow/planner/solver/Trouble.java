package kitstow.planner.solver;

/**
 * How often of late each unit was the one for which a packing came to nothing. What is hard to
 * place had better go before the rest (D. E. Joslin, D. P. Clements, "Squeaky wheel optimization",
 * 1999, from memory).
 */
final class Trouble {
  private static final double KEPT = 0.99;

  private final double[] met;

  /**
   * None as yet.
   *
   * @param units number of units
   */
  Trouble(int units) {
    this.met = new double[units];
  }

  /** A unit found no place, and without it the packing was not worth going on with. */
  void meet(int unit) {
    for (int i = 0; i < met.length; i++) {
      met[i] *= KEPT;
    }
    met[unit]++;
  }

  /** The higher the oftener, and the later, a unit gave trouble; 0 for none. */
  double of(int unit) {
    return met[unit];
  }
}
