package kitstow.tui.keys;

import java.util.function.Function;

/** What is drawn in a cell, for whoever points at it. */
public sealed interface Target {
  /** One function for each kind. */
  <R> R match(Function<Spot, R> spot, Function<Row, R> row, Function<Press, R> press);

  /**
   * A spot in a picture of the load.
   *
   * @param key body key of the unit of gear that is drawn there, or ""
   * @param eye name of the view
   * @param acrossMm millimetres along the picture
   * @param upMm millimetres up the picture
   */
  record Spot(String key, String eye, int acrossMm, int upMm) implements Target {
    @Override
    public <R> R match(Function<Spot, R> spot, Function<Row, R> row, Function<Press, R> press) {
      return spot.apply(this);
    }
  }

  /**
   * A row of the list that is shown.
   *
   * @param index its place in the list
   */
  record Row(int index) implements Target {
    @Override
    public <R> R match(Function<Spot, R> spot, Function<Row, R> row, Function<Press, R> press) {
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
    public <R> R match(Function<Spot, R> spot, Function<Row, R> row, Function<Press, R> press) {
      return press.apply(this);
    }
  }
}
