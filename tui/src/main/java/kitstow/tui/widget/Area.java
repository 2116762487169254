package kitstow.tui.widget;

/**
 * A rectangle of cells.
 *
 * @param column first column
 * @param row first row
 * @param columns columns in all, zero or more
 * @param rows rows in all, zero or more
 */
public record Area(int column, int row, int columns, int rows) {
  /** Never less than nothing. */
  public Area {
    columns = Math.max(0, columns);
    rows = Math.max(0, rows);
  }

  /** The upper rows of it. */
  public Area top(int count) {
    return new Area(column, row, columns, Math.min(rows, count));
  }

  /** All but the upper rows. */
  public Area belowTop(int count) {
    return new Area(column, row + count, columns, rows - count);
  }

  /** The lower rows of it. */
  public Area bottom(int count) {
    int taken = Math.min(rows, count);
    return new Area(column, row + rows - taken, columns, taken);
  }

  /** All but the lower rows. */
  public Area aboveBottom(int count) {
    return new Area(column, row, columns, rows - count);
  }

  /** The left columns of it. */
  public Area left(int count) {
    return new Area(column, row, Math.min(columns, count), rows);
  }

  /** All but the left columns. */
  public Area rightOf(int count) {
    return new Area(column + count, row, columns - count, rows);
  }
}
