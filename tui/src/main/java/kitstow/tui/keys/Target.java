package kitstow.tui.keys;

import java.util.function.Function;

/** What is drawn in a cell, for whoever points at it. */
public sealed interface Target {
  /** One function for each kind. */
  <R> R match(Function<Thing, R> thing, Function<Row, R> row, Function<Press, R> press);

  /**
   * A unit of gear.
   *
   * @param key its body key
   */
  record Thing(String key) implements Target {
    @Override
    public <R> R match(Function<Thing, R> thing, Function<Row, R> row, Function<Press, R> press) {
      return thing.apply(this);
    }
  }

  /**
   * A row of the list that is shown.
   *
   * @param index its place in the list
   */
  record Row(int index) implements Target {
    @Override
    public <R> R match(Function<Thing, R> thing, Function<Row, R> row, Function<Press, R> press) {
      return row.apply(this);
    }
  }

  /**
   * A word that stands for a key.
   *
   * @param key the key
   */
  record Press(KeyPress key) implements Target {
    @Override
    public <R> R match(Function<Thing, R> thing, Function<Row, R> row, Function<Press, R> press) {
      return press.apply(this);
    }
  }
}
