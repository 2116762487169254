package kitstow.tui.view;

import java.util.ArrayList;
import java.util.List;

/**
 * Cells with lines and signs. Lines that meet are joined; a rectangle that is filled hides what was
 * drawn inside it before. Cells outside are left out without a word.
 */
final class Canvas {
  private static final int NORTH = 1;
  private static final int EAST = 2;
  private static final int SOUTH = 4;
  private static final int WEST = 8;
  private static final String JOINED = " ╵╶└╷│┌├╴┘─┴┐┤┬┼";
  private static final String JOINED_ASCII = " |-+||++-+-+++++";

  private final int columns;
  private final int rows;
  private final int[][] lines;
  private final char[][] signs;
  private final int[][] owners;

  Canvas(int columns, int rows) {
    this.columns = columns;
    this.rows = rows;
    this.lines = new int[rows][columns];
    this.signs = new char[rows][columns];
    this.owners = new int[rows][columns];
  }

  /** Puts a sign; a later line or filled rectangle covers it. */
  void sign(int column, int row, char sign) {
    if (holds(column, row)) {
      signs[row][column] = sign;
    }
  }

  /** Draws a rectangle; without extent one way it is a line, both ways a dot. */
  void rectangle(int left, int top, int right, int bottom) {
    for (int column = left; column < right; column++) {
      join(column, top, EAST);
      join(column + 1, top, WEST);
      join(column, bottom, EAST);
      join(column + 1, bottom, WEST);
    }
    for (int row = top; row < bottom; row++) {
      join(left, row, SOUTH);
      join(left, row + 1, NORTH);
      join(right, row, SOUTH);
      join(right, row + 1, NORTH);
    }
    if (left == right && top == bottom) {
      sign(left, top, '.');
    }
  }

  /** Hides what is inside a rectangle and takes its cells for an owner above zero. */
  void fill(int left, int top, int right, int bottom, int owner) {
    for (int row = top; row <= bottom; row++) {
      for (int column = left; column <= right; column++) {
        if (holds(column, row)) {
          hide(column, row, owner, column > left, column < right, row > top, row < bottom);
        }
      }
    }
  }

  private void hide(
      int column, int row, int owner, boolean west, boolean east, boolean north, boolean south) {
    boolean inside = west && east && north && south;
    signs[row][column] = 0;
    if (inside) {
      lines[row][column] = 0;
      owners[row][column] = owner;
      return;
    }
    // On the edge a line into the rectangle goes, one along the edge or away from it stays.
    int inward = 0;
    if (west && east) {
      inward = north ? NORTH : SOUTH;
    } else if (north && south) {
      inward = west ? WEST : EAST;
    }
    lines[row][column] &= ~inward;
  }

  private void join(int column, int row, int side) {
    if (holds(column, row)) {
      lines[row][column] |= side;
      signs[row][column] = 0;
    }
  }

  /** Whether a key may stand in a run of cells: no sign is in it and no other key beside it. */
  boolean free(int column, int row, int length) {
    if (keyAt(column - 1, row) || keyAt(column + length, row)) {
      return false;
    }
    for (int i = 0; i < length; i++) {
      if (!holds(column + i, row) || signs[row][column + i] > ' ') {
        return false;
      }
    }
    return true;
  }

  private boolean keyAt(int column, int row) {
    return holds(column, row) && Character.isLetterOrDigit(signs[row][column]);
  }

  /** Whether no line runs through a run of cells. */
  boolean blank(int column, int row, int length) {
    for (int i = 0; i < length; i++) {
      if (!holds(column + i, row) || lines[row][column + i] != 0) {
        return false;
      }
    }
    return true;
  }

  /** Whether a run of cells belongs to an owner. */
  boolean owned(int column, int row, int length, int owner) {
    for (int i = 0; i < length; i++) {
      if (!holds(column + i, row) || owners[row][column + i] != owner) {
        return false;
      }
    }
    return true;
  }

  /** Puts a text over whatever is there. */
  void text(int column, int row, String text) {
    for (int i = 0; i < text.length(); i++) {
      sign(column + i, row, text.charAt(i));
    }
  }

  /** The lines without blanks at their ends. */
  List<String> lines(boolean ascii) {
    List<String> text = new ArrayList<>();
    for (int row = 0; row < rows; row++) {
      StringBuilder line = new StringBuilder();
      for (int column = 0; column < columns; column++) {
        char sign = signs[row][column];
        int joined = lines[row][column];
        line.append(sign != 0 ? sign : (ascii ? JOINED_ASCII : JOINED).charAt(joined));
      }
      text.add(line.toString().stripTrailing());
    }
    return text;
  }

  private boolean holds(int column, int row) {
    return column >= 0 && column < columns && row >= 0 && row < rows;
  }
}
