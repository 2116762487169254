package kitstow.planner.json;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import kitstow.planner.problem.Code;
import kitstow.planner.problem.Problem;
import kitstow.planner.problem.ProblemReport;
import kitstow.planner.problem.Severity;

/**
 * Notes problems as readers come upon them and lists them in the order of the text. Several files
 * may be read one after the other with {@link #nextFile()} between them.
 */
final class Faults {
  /** More are only counted: a text full of faults must not fill the memory. */
  private static final int MOST_KEPT = 20_000;

  private record Noted(int file, int order, Problem problem) {}

  private final List<Noted> noted = new ArrayList<>();
  private final TreeSet<Integer> faultyOrders = new TreeSet<>();
  private int file;
  private int errors;
  private int notKept;

  /** Goes on to another file. */
  void nextFile() {
    file++;
    faultyOrders.clear();
  }

  /** Notes a fault. */
  void error(Code code, Place place, String message, String hint) {
    errors++;
    faultyOrders.add(place.first());
    note(new Problem(code, place.path().toString(), Severity.ERROR, message, hint), place);
  }

  /** Notes something that is probably not meant. */
  void warning(Code code, Place place, String message, String hint) {
    note(new Problem(code, place.path().toString(), Severity.WARNING, message, hint), place);
  }

  private void note(Problem problem, Place place) {
    if (noted.size() < MOST_KEPT) {
      noted.add(new Noted(file, place.first(), problem));
    } else {
      notKept++;
    }
  }

  /** Whether a fault was noted at a value of this file or inside it. */
  boolean anyIn(Place place) {
    Integer next = faultyOrders.ceiling(place.first());
    return next != null && next <= place.last();
  }

  /** The value, or all problems if one of them is a fault. */
  <T> Outcome<T> outcome(T value) {
    return errors == 0 ? new Outcome.Read<>(value, report()) : refused();
  }

  /** All problems. */
  <T> Outcome<T> refused() {
    return new Outcome.Refused<>(report());
  }

  /** All problems, in the order of the text. */
  ProblemReport report() {
    List<Noted> sorted = new ArrayList<>(noted);
    sorted.sort(Comparator.comparingInt(Noted::file).thenComparingInt(Noted::order));
    List<Problem> problems = new ArrayList<>();
    for (Noted one : sorted) {
      if (problems.size() == ProblemReport.MOST_PROBLEMS) {
        problems.add(moreThan(noted.size() + notKept - problems.size()));
        break;
      }
      problems.add(one.problem());
    }
    return new ProblemReport(problems);
  }

  private Problem moreThan(int leftOut) {
    return new Problem(
        Code.MORE_PROBLEMS,
        "$",
        errors > 0 ? Severity.ERROR : Severity.WARNING,
        "has " + leftOut + " more problems that are not listed",
        "put right those above and read it again");
  }
}
