package kitstow.tui.app;

import java.util.function.Function;
import java.util.function.Supplier;

/** What lies over the page. */
public sealed interface Overlay {
  /** Nothing. */
  Overlay NONE = new None();

  /** One function for each kind. */
  <R> R match(
      Supplier<R> none, Function<Keys, R> keys, Function<Find, R> find, Function<Told, R> told);

  /** Nothing. */
  record None() implements Overlay {
    @Override
    public <R> R match(
        Supplier<R> none, Function<Keys, R> keys, Function<Find, R> find, Function<Told, R> told) {
      return none.get();
    }
  }

  /**
   * All keys.
   *
   * @param row first line
   */
  record Keys(int row) implements Overlay {
    @Override
    public <R> R match(
        Supplier<R> none, Function<Keys, R> keys, Function<Find, R> find, Function<Told, R> told) {
      return keys.apply(this);
    }
  }

  /**
   * A thing is looked for.
   *
   * @param typed what was typed so far
   * @param before what was looked at before
   */
  record Find(String typed, Looking before) implements Overlay {
    @Override
    public <R> R match(
        Supplier<R> none, Function<Keys, R> keys, Function<Find, R> find, Function<Told, R> told) {
      return find.apply(this);
    }
  }

  /**
   * Something is told that has several lines.
   *
   * @param title what it is about
   * @param lines what is told
   */
  record Told(String title, java.util.List<String> lines) implements Overlay {
    /** Copies its collections. */
    public Told {
      lines = java.util.List.copyOf(lines);
    }

    @Override
    public <R> R match(
        Supplier<R> none, Function<Keys, R> keys, Function<Find, R> find, Function<Told, R> told) {
      return told.apply(this);
    }
  }
}
