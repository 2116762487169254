package kitstow.planner.json;

import java.util.function.Function;
import kitstow.planner.problem.ProblemReport;

/**
 * What reading a text came to: a value, or the list of all its faults.
 *
 * @param <T> what was to be read
 */
public sealed interface Outcome<T> {

  /** One function for each way it can end. */
  <R> R match(Function<Read<T>, R> read, Function<Refused<T>, R> refused);

  /**
   * The text was read.
   *
   * @param value what it says
   * @param warnings what is probably not meant
   */
  record Read<T>(T value, ProblemReport warnings) implements Outcome<T> {
    @Override
    public <R> R match(Function<Read<T>, R> read, Function<Refused<T>, R> refused) {
      return read.apply(this);
    }
  }

  /**
   * The text cannot be used.
   *
   * @param report all its faults in document order
   */
  record Refused<T>(ProblemReport report) implements Outcome<T> {
    @Override
    public <R> R match(Function<Read<T>, R> read, Function<Refused<T>, R> refused) {
      return refused.apply(this);
    }
  }
}
