package kitstow.planner.model;

/** Mass that a regime allows for one seat when a fit-out is certified. */
public enum SeatAllowance {
  /** 68 kg and 13.6 kg of luggage (VSB 14 as told by a trade article, [S45]). */
  AUSTRALIA(81_600L),
  /** 75 kg (1230/2012: 68 kg and 7 kg of luggage, from memory; 75 kg read in [S40]). */
  EUROPE(75_000L),
  /** 150 lb of 0.45359237 kg (49 CFR 571.110, [S42]). */
  UNITED_STATES(68_039L);

  private final long massG;

  SeatAllowance(long massG) {
    this.massG = massG;
  }

  /** Grams for one seat. */
  public long massG() {
    return massG;
  }
}
