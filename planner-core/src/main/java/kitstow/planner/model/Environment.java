package kitstow.planner.model;

/** What the air and the walls of a space are like. */
public enum Environment {
  /** In the open: shares air with no other space. */
  OPEN_AIR,
  /** Vented to the outside at low level and sealed from the box around it. */
  VENTED_OUTSIDE,
  /** Sealed against the air around it. */
  SEALED,
  /** Can be locked. */
  LOCKABLE,
  /** Keeps dust out. */
  DUST_PROOF,
  /** Has electric power. */
  POWERED
}
