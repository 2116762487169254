package kitstow.planner.rules;

/** How well the source of a rule is known. */
public enum SourceStatus {
  /** Its text was read. */
  READ,
  /** A second-hand copy or retelling was read. */
  READ_SECOND_HAND,
  /** From memory. */
  MEMORY,
  /** Common practice, no source. */
  COMMON_PRACTICE,
  /** Follows from geometry or statics alone. */
  BY_DEFINITION
}
