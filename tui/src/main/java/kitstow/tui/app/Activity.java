package kitstow.tui.app;

import java.util.function.Function;
import java.util.function.Supplier;
import kitstow.tui.edit.Design;

/** What is going on with the design. */
public sealed interface Activity {
  /** Nothing. */
  Activity NONE = new None();

  /** One function for each kind. */
  <R> R match(Supplier<R> none, Function<Carrying, R> carrying, Function<Searching, R> searching);

  /** Nothing. */
  record None() implements Activity {
    @Override
    public <R> R match(
        Supplier<R> none, Function<Carrying, R> carrying, Function<Searching, R> searching) {
      return none.get();
    }
  }

  /**
   * A thing is being carried; the design shows it where it is held.
   *
   * @param key its body key
   * @param before how it was
   */
  record Carrying(String key, Design before) implements Activity {
    @Override
    public <R> R match(
        Supplier<R> none, Function<Carrying, R> carrying, Function<Searching, R> searching) {
      return carrying.apply(this);
    }
  }

  /**
   * A plan is being searched for; the design is the best so far.
   *
   * @param number number of the search, so that what comes late is known
   * @param before how it was
   * @param limitSeconds time it may take
   * @param seconds time it has taken
   * @param momentNm moment of the best so far
   * @param unitsHome units at home in it; -1 before there is one
   * @param stopping whether it has been told to stop
   */
  record Searching(
      int number,
      Design before,
      double limitSeconds,
      double seconds,
      double momentNm,
      int unitsHome,
      boolean stopping)
      implements Activity {
    /** Some time later. */
    public Searching at(double later) {
      return new Searching(number, before, limitSeconds, later, momentNm, unitsHome, stopping);
    }

    /** With a better plan. */
    public Searching found(double moment, int home) {
      return new Searching(number, before, limitSeconds, seconds, moment, home, stopping);
    }

    /** Told to stop. */
    public Searching stopped() {
      return new Searching(
          number, before, limitSeconds, seconds, momentNm, unitsHome, /* stopping= */ true);
    }

    @Override
    public <R> R match(
        Supplier<R> none, Function<Carrying, R> carrying, Function<Searching, R> searching) {
      return searching.apply(this);
    }
  }
}
