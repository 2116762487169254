package kitstow.tui.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import kitstow.planner.problem.Problem;
import kitstow.planner.problem.ProblemReport;
import kitstow.planner.problem.Severity;
import kitstow.tui.view.Plain;

/** Everything that is wrong with the files that were given, to be told all at once. */
public final class InputFaults {
  private final List<String> lines = new ArrayList<>();
  private boolean stop;

  /** A file that cannot be used at all. */
  void file(String name, String message, String hint) {
    lines.add(name + ": " + message + ". Hint: " + hint);
    stop = true;
  }

  /** What a reader found in one file. */
  void in(String name, ProblemReport report) {
    for (Problem problem : report.problems()) {
      add(name + " ", problem);
    }
  }

  /** What a reader found in several files; it names them itself. */
  void inSeveral(ProblemReport report) {
    for (Problem problem : report.problems()) {
      add("", problem);
    }
  }

  /** What was noted elsewhere. */
  void addAll(InputFaults others) {
    lines.addAll(others.lines);
    stop |= others.stop;
  }

  private void add(String prefix, Problem problem) {
    boolean warning = problem.severity() == Severity.WARNING;
    lines.add((warning ? "warning: " : "") + prefix + problem.text());
    stop |= !warning;
  }

  /** Something to know about the faults. */
  void remark(String text) {
    lines.add(text);
  }

  /** What was noted, one fault a line, fit to be shown. */
  public List<String> lines() {
    return lines.stream().map(Plain::safe).toList();
  }

  /** Whether the input cannot be used. */
  public boolean stop() {
    return stop;
  }

  /** Prints all, one a line. */
  void print(PrintWriter err) {
    lines.forEach(line -> err.println(Plain.safe(line)));
    err.flush();
  }
}
