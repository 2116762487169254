package kitstow.planner.problem;

/**
 * One fault in the input.
 *
 * @param code what sort of fault it is
 * @param jsonPath where it is, {@code $.gear[3].massKg}; with the file's name in front of it where
 *     several files are read together
 * @param severity whether it stops the reading
 * @param message the fact with value and unit, then the rule; it follows on the path
 * @param hint what to do next
 */
public record Problem(Code code, String jsonPath, Severity severity, String message, String hint) {

  /** The whole problem in one line: path, fact, rule and next step. */
  public String text() {
    return jsonPath + ": " + message + ". Hint: " + hint;
  }
}
