package kitstow.tui.screen;

import kitstow.tui.widget.Area;
import kitstow.tui.widget.Frame;
import kitstow.tui.widget.Ink;

/** A box over the page. */
final class BoxView {
  static final int MARGIN = 4;
  static final int MOST_COLUMNS = 96;

  private BoxView() {}

  /** Columns of text in a box. */
  static int textColumns(Area all) {
    return Math.min(MOST_COLUMNS, all.columns() - 2 * MARGIN) - 4;
  }

  /** Draws an empty box for so many lines, as far as they fit, and returns the area for them. */
  static Area draw(Frame frame, Area all, String title, int lines) {
    int columns = Math.min(MOST_COLUMNS, all.columns() - 2 * MARGIN);
    int rows = Math.min(lines + 2, all.rows() - 4);
    Area box = new Area((all.columns() - columns) / 2, (all.rows() - rows) / 2, columns, rows);
    frame.clear(box);
    for (int x = 0; x < columns; x++) {
      frame.sign(box, x, 0, '─', '-', Ink.PLAIN);
      frame.sign(box, x, rows - 1, '─', '-', Ink.PLAIN);
    }
    for (int y = 0; y < rows; y++) {
      boolean top = y == 0;
      boolean bottom = y == rows - 1;
      char plain = top || bottom ? '+' : '|';
      frame.sign(box, 0, y, top ? '┌' : bottom ? '└' : '│', plain, Ink.PLAIN);
      frame.sign(box, columns - 1, y, top ? '┐' : bottom ? '┘' : '│', plain, Ink.PLAIN);
    }
    frame.text(box.left(columns - 1), 2, 0, " " + title + " ", Ink.STRONG);
    return new Area(box.column() + 2, box.row() + 1, columns - 4, rows - 2);
  }
}
