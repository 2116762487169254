package kitstow.planner.solver;

/** What counts in a round of search. */
enum Aim {
  /** The whole score. */
  ALL,

  /** What is aboard, by its value: things may be moved about freely until more goes in. */
  VALUE,

  /** What is aboard, by its room: what is large goes in first, since a gap for little is found. */
  ROOM;

  /** Whether only what is aboard counts. */
  boolean fills() {
    return this == VALUE || this == ROOM;
  }
}
