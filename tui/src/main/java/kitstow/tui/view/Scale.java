package kitstow.tui.view;

/**
 * How millimetres lie on cells. A cell is twice as high as it is wide, as terminal cells are, so
 * that a drawing is to scale in both directions. Edges lie on whole cells: a millimetre is drawn in
 * the nearest column or row, half a cell away at most.
 *
 * @param leftMm millimetres (along x) at the middle of the first column
 * @param topMm millimetres (along z or y) at the middle of the first row
 * @param mmPerColumn millimetres across one cell; two of them up one cell
 * @param columns columns in all
 * @param rows rows in all
 */
public record Scale(int leftMm, int topMm, int mmPerColumn, int columns, int rows) {
  /** Cells as high as so many cells are wide. */
  private static final int CELL_HEIGHT = 2;

  /** The largest scale at which a window fits into a number of columns. */
  public static Scale fit(int minXMm, int maxXMm, int minUpMm, int maxUpMm, int columns) {
    int perColumn = Math.max(1, ceilDiv(maxXMm - minXMm, columns - 1));
    int used = ceilDiv(maxXMm - minXMm, perColumn) + 1;
    int rows = ceilDiv(maxUpMm - minUpMm, CELL_HEIGHT * perColumn) + 1;
    return new Scale(minXMm, maxUpMm, perColumn, used, rows);
  }

  private static int ceilDiv(int value, int by) {
    return -Math.floorDiv(-value, by);
  }

  /** Millimetres up one cell. */
  public int mmPerRow() {
    return CELL_HEIGHT * mmPerColumn;
  }

  /** Column of an x. */
  public int column(double xMm) {
    return (int) Math.round((xMm - leftMm) / mmPerColumn);
  }

  /** Row of a height (or of a y, the right side being up). */
  public int row(double upMm) {
    return (int) Math.round((topMm - upMm) / mmPerRow());
  }

  /** x at the middle of a column. */
  public int xMm(int column) {
    return leftMm + column * mmPerColumn;
  }

  /** Height, or y, at the middle of a row. */
  public int upMm(int row) {
    return topMm - row * mmPerRow();
  }

  /** Whether a cell is in the drawing. */
  boolean holds(int column, int row) {
    return column >= 0 && column < columns && row >= 0 && row < rows;
  }
}
