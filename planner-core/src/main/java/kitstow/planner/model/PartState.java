package kitstow.planner.model;

/** Where a removable part is on this trip. */
public enum PartState {
  /** Fitted in its place. */
  ON,
  /** Left at home. */
  OFF,
  /** Carried as an item in a space. */
  STOWED
}
