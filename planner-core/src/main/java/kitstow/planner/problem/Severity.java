package kitstow.planner.problem;

/** Whether a problem stops the reading. */
public enum Severity {
  /** The input cannot be used. */
  ERROR,
  /** The input can be used, but something in it is probably not meant. */
  WARNING
}
