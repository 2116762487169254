package kitstow.tui.widget;

import java.util.List;

/** Text that may be longer than its area. */
public final class Lines {
  private Lines() {}

  /** Draws lines from one of them on; tells at the right what lies above and below. */
  public static void draw(Frame frame, Area area, List<String> lines, int from) {
    int first = first(lines.size(), area.rows(), from);
    for (int y = 0; y < area.rows() && first + y < lines.size(); y++) {
      String line = lines.get(first + y);
      frame.text(area, 0, y, line, heading(lines, first + y) ? Ink.STRONG : Ink.PLAIN);
    }
    more(frame, area, first, lines.size());
  }

  /** The first line shown, so that the last page is full. */
  public static int first(int count, int rows, int from) {
    return Math.max(0, Math.min(from, count - rows));
  }

  /** A row of a list that is marked stays on the screen. */
  public static int firstFor(int marked, int count, int rows) {
    return first(count, rows, marked - rows / 2);
  }

  /** Signs at the right that there is more above or below. */
  public static void more(Frame frame, Area area, int first, int count) {
    if (first > 0) {
      frame.sign(area, area.columns() - 1, 0, '▲', '^', Ink.STRONG);
    }
    if (first + area.rows() < count) {
      frame.sign(area, area.columns() - 1, area.rows() - 1, '▼', 'v', Ink.STRONG);
    }
  }

  private static boolean heading(List<String> lines, int index) {
    return index + 1 < lines.size()
        && lines.get(index + 1).startsWith("──")
        && !lines.get(index).isEmpty();
  }
}
