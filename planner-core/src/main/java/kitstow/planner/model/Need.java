package kitstow.planner.model;

/** How much something is wanted along. */
public enum Need {
  /** Must come. */
  MUST,
  /** Should come. */
  SHOULD,
  /** Nice to have. */
  NICE
}
