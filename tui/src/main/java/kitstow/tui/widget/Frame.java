package kitstow.tui.widget;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import kitstow.tui.keys.Target;
import kitstow.tui.view.Plain;
import org.jspecify.annotations.Nullable;

/**
 * A whole screen as cells. Everything that is shown goes through here, and nothing that could drive
 * a terminal passes; what lies outside is left out. With each cell goes what it stands for, so that
 * it can be pointed at.
 */
public final class Frame {
  /** Stands in the second cell of a sign that is two cells wide. */
  static final int NOTHING = 0;

  private final int columns;
  private final int rows;
  private final boolean ascii;
  private final int[] signs;
  private final Ink[] inks;
  private final @Nullable Target[] targets;

  /** An empty frame. */
  public Frame(int columns, int rows, boolean ascii) {
    this.columns = columns;
    this.rows = rows;
    this.ascii = ascii;
    this.signs = new int[columns * rows];
    this.inks = new Ink[columns * rows];
    this.targets = new Target[columns * rows];
    Arrays.fill(signs, ' ');
    Arrays.fill(inks, Ink.PLAIN);
  }

  /** The whole of it. */
  public Area area() {
    return new Area(0, 0, columns, rows);
  }

  /** Whether only ASCII may be used. */
  public boolean ascii() {
    return ascii;
  }

  /** Puts a text into a row of an area; what does not fit is cut. Returns the columns taken. */
  public int text(Area area, int x, int y, String text, Ink ink) {
    if (y < 0 || y >= area.rows()) {
      return 0;
    }
    String shown = ascii ? Plain.ascii(Plain.safe(text)) : Plain.safe(text);
    int at = x;
    for (int i = 0; i < shown.length(); i += Character.charCount(shown.codePointAt(i))) {
      int sign = shown.codePointAt(i);
      if (Character.getType(sign) == Character.NON_SPACING_MARK) {
        continue;
      }
      int width = Wide.columns(sign);
      if (at + width > area.columns()) {
        break;
      }
      if (at >= 0) {
        set(area.column() + at, area.row() + y, sign, ink);
        if (width > 1) {
          set(area.column() + at + 1, area.row() + y, NOTHING, ink);
        }
      }
      at += width;
    }
    return Math.max(0, at - x);
  }

  /** Puts a text at the right end of a row of an area. */
  public void textRight(Area area, int y, String text, Ink ink) {
    String shown = ascii ? Plain.ascii(Plain.safe(text)) : Plain.safe(text);
    text(area, Math.max(0, area.columns() - Wide.columns(shown)), y, shown, ink);
  }

  /** Puts a sign of ours, with another for plain ASCII. */
  public void sign(Area area, int x, int y, char unicode, char plain, Ink ink) {
    if (x >= 0 && x < area.columns() && y >= 0 && y < area.rows()) {
      set(area.column() + x, area.row() + y, ascii ? plain : unicode, ink);
    }
  }

  /** Gives every cell of an area an ink. */
  public void paint(Area area, Ink ink) {
    for (int row = area.row(); row < area.row() + area.rows(); row++) {
      for (int column = area.column(); column < area.column() + area.columns(); column++) {
        if (holds(column, row)) {
          inks[row * columns + column] = ink;
        }
      }
    }
  }

  /** Empties an area. */
  public void clear(Area area) {
    for (int row = area.row(); row < area.row() + area.rows(); row++) {
      for (int column = area.column(); column < area.column() + area.columns(); column++) {
        if (holds(column, row)) {
          set(column, row, ' ', Ink.PLAIN);
          targets[row * columns + column] = null;
        }
      }
    }
  }

  /** Says what the cells of an area stand for. */
  public void target(Area area, Target target) {
    for (int row = area.row(); row < area.row() + area.rows(); row++) {
      for (int column = area.column(); column < area.column() + area.columns(); column++) {
        if (holds(column, row)) {
          targets[row * columns + column] = target;
        }
      }
    }
  }

  private void set(int column, int row, int sign, Ink ink) {
    if (holds(column, row)) {
      signs[row * columns + column] = sign;
      inks[row * columns + column] = ink;
    }
  }

  private boolean holds(int column, int row) {
    return column >= 0 && column < columns && row >= 0 && row < rows;
  }

  /** What a cell stands for. */
  public Optional<Target> targetAt(int column, int row) {
    return holds(column, row)
        ? Optional.ofNullable(targets[row * columns + column])
        : Optional.empty();
  }

  /** The sign in a cell; 0 in the second cell of a wide one. */
  public int signAt(int column, int row) {
    return signs[row * columns + column];
  }

  /** The ink of a cell. */
  public Ink inkAt(int column, int row) {
    return inks[row * columns + column];
  }

  /** The frame as lines of text without blanks at their ends. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    for (int row = 0; row < rows; row++) {
      StringBuilder line = new StringBuilder();
      for (int column = 0; column < columns; column++) {
        int sign = signs[row * columns + column];
        if (sign != NOTHING) {
          line.appendCodePoint(sign);
        }
      }
      lines.add(line.toString().stripTrailing());
    }
    return lines;
  }
}
