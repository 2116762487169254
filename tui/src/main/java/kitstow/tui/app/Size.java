package kitstow.tui.app;

/**
 * Size of the screen in cells.
 *
 * @param columns columns
 * @param rows rows
 */
public record Size(int columns, int rows) {
  /** The smallest screen on which everything is legible. */
  public static final Size LEAST = new Size(80, 24);

  /** Whether everything is legible at this size. */
  public boolean enough() {
    return columns >= LEAST.columns && rows >= LEAST.rows;
  }
}
