package kitstow.planner.problem;

import java.util.List;

/**
 * What was found in the input, in document order. At most {@link #MOST_PROBLEMS} are listed; if
 * there were more, the last one says how many were left out.
 *
 * @param problems problems in document order
 */
public record ProblemReport(List<Problem> problems) {
  /** How many problems a report lists at most, not counting the one that says so. */
  public static final int MOST_PROBLEMS = 200;

  /** Nothing found. */
  public static final ProblemReport NONE = new ProblemReport(List.of());

  /** Copies its collections. */
  public ProblemReport {
    problems = List.copyOf(problems);
  }

  /** One line for each problem, each ended by a line feed. */
  public String text() {
    StringBuilder text = new StringBuilder();
    for (Problem problem : problems) {
      text.append(problem.text()).append('\n');
    }
    return text.toString();
  }
}
