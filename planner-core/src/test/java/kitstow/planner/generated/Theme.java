package kitstow.planner.generated;

/**
 * What the gear of a scenario has so much of that the rules about it are in the way. There is room
 * to spare where a thing is to be kept from a free place, and too little where things are to be
 * left over.
 */
enum Theme {
  /**
   * Gas and less fuel, too heavy for a roof, among things that are nothing to them, so that only
   * their air counts.
   */
  GAS(0.3, 0.6),
  /** Fuel and less gas, likewise. */
  FUEL(0.3, 0.6),
  /** Two kinds that may never share a space. */
  STRANGERS(0.3, 0.6),
  /** Light things that must stay dry, while there is room in the open. */
  DRY(0.8, 1.1),
  /** Compact things too heavy for a roof, while there is room on one. */
  HEAVY(0.8, 1.1),
  /** Light things of all kinds, more than a roof or its bars may carry. */
  LIGHT(0.8, 1.1),
  /** Things that carry little or nothing, or open upwards, while there is room above them. */
  DELICATE(0.6, 1.1);

  private final double leastFill;
  private final double mostFill;

  Theme(double leastFill, double mostFill) {
    this.leastFill = leastFill;
    this.mostFill = mostFill;
  }

  /** Theme of a scenario, by its number. */
  static Theme of(int number) {
    return values()[number % values().length];
  }

  /** Share of the room that the gear fills. */
  double fill(double ofRange) {
    return leastFill + (mostFill - leastFill) * ofRange;
  }

  /** Whether all of it is light for its size. */
  boolean light() {
    return this == DRY || this == LIGHT;
  }

  /** What any of it weighs at least; more than a roof takes where it is heavy. */
  long leastG() {
    return fumes() || this == HEAVY ? 6_000L : 200L;
  }

  /** What any of it weighs at most. */
  long mostG() {
    return this == DRY ? 4_500L : fumes() ? 12_000L : 60_000L;
  }

  /** Whether it needs a carrier in the open behind the tray. */
  boolean fumes() {
    return this == GAS || this == FUEL;
  }

  /** Whether it needs a roof. */
  boolean onRoofs() {
    return roofIsStrong() || this == LIGHT;
  }

  /** Whether it needs a ute that can carry all of it. */
  boolean uteIsStrong() {
    return onRoofs() || fumes();
  }

  /** Whether the roof is to be able to carry it. */
  boolean roofIsStrong() {
    return this == DRY || this == HEAVY;
  }
}
