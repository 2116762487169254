package kitstow.planner.solver;

/** What counts in a round of search. */
enum Aim {
  /** The whole score. */
  ALL,

  /** The same with moments in fine steps: gains that are too small to count add up to one. */
  FINE,

  /** What is aboard, by its value: things may be moved about freely until more goes in. */
  VALUE,

  /** What is aboard, by its room: what is large goes in first, since a gap for little is found. */
  ROOM;

  /** So many fine steps of a moment are one step. */
  static final int FINE_STEPS = 100;

  /** Whether only what is aboard counts. */
  boolean fills() {
    return this == VALUE || this == ROOM;
  }
}
