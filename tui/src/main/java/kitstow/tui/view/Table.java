package kitstow.tui.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** A table of text with a heading line; some columns share the width that the others leave. */
final class Table {
  /** How a column is filled. */
  private enum Fill {
    LEFT,
    RIGHT,
    REST
  }

  private record Column(String title, Fill fill) {}

  private static final int LEAST_REST = 8;

  private final List<Column> columns = new ArrayList<>();
  private final List<List<String>> rows = new ArrayList<>();

  /** A column of words as wide as its longest. */
  Table words(String title) {
    columns.add(new Column(title, Fill.LEFT));
    return this;
  }

  /** A column of figures. */
  Table figures(String title) {
    columns.add(new Column(title, Fill.RIGHT));
    return this;
  }

  /** A column of words that takes its share of the rest of the width and is broken into lines. */
  Table rest(String title) {
    columns.add(new Column(title, Fill.REST));
    return this;
  }

  void row(String... cells) {
    if (cells.length != columns.size()) {
      throw new IllegalArgumentException(cells.length + " cells for " + columns.size());
    }
    rows.add(List.of(cells));
  }

  /** A line over all columns above the rows that follow it, set off by an empty one. */
  void group(String text) {
    rows.add(List.of(text));
  }

  private boolean isGroup(List<String> row) {
    return row.size() == 1 && columns.size() > 1;
  }

  boolean isEmpty() {
    return rows.isEmpty();
  }

  List<String> lines(Page page) {
    List<List<String>> shown = new ArrayList<>();
    for (List<String> row : rows) {
      shown.add(row.stream().map(page::shown).toList());
    }
    int[] widths = widths(shown, page.width());
    List<String> lines = new ArrayList<>();
    List<String> titles = new ArrayList<>();
    StringBuilder rule = new StringBuilder();
    for (int i = 0; i < widths.length; i++) {
      titles.add(page.shown(columns.get(i).title()));
      String dash = columns.get(i).title().isEmpty() ? " " : page.ascii() ? "-" : "─";
      rule.append(i == 0 ? "" : "  ").append(dash.repeat(widths[i]));
    }
    add(titles, widths, lines);
    lines.add(rule.toString().stripTrailing());
    for (List<String> row : shown) {
      if (isGroup(row)) {
        lines.add("");
        lines.addAll(Page.wrapped(row.get(0), page.width()));
      } else {
        add(row, widths, lines);
      }
    }
    return lines;
  }

  private int[] widths(List<List<String>> shown, int pageWidth) {
    int[] widths = new int[columns.size()];
    int left = pageWidth - 2 * (widths.length - 1);
    List<Integer> sharing = new ArrayList<>();
    for (int i = 0; i < widths.length; i++) {
      widths[i] = columns.get(i).title().length();
      for (List<String> row : shown) {
        widths[i] = Math.max(widths[i], isGroup(row) ? 0 : row.get(i).length());
      }
      if (columns.get(i).fill() == Fill.REST) {
        sharing.add(i);
      } else {
        left -= widths[i];
      }
    }
    // The narrowest first: what a column does not need is left to the others.
    sharing.sort(Comparator.comparingInt(i -> widths[i]));
    for (int n = 0; n < sharing.size(); n++) {
      int i = sharing.get(n);
      widths[i] = Math.max(LEAST_REST, Math.min(widths[i], left / (sharing.size() - n)));
      left -= widths[i];
    }
    return widths;
  }

  private void add(List<String> cells, int[] widths, List<String> lines) {
    List<List<String>> parts = new ArrayList<>();
    int height = 1;
    for (int i = 0; i < widths.length; i++) {
      List<String> part =
          columns.get(i).fill() == Fill.REST
              ? Page.wrapped(cells.get(i), widths[i])
              : List.of(cells.get(i));
      parts.add(part);
      height = Math.max(height, part.size());
    }
    for (int line = 0; line < height; line++) {
      StringBuilder text = new StringBuilder();
      for (int i = 0; i < widths.length; i++) {
        String cell = line < parts.get(i).size() ? parts.get(i).get(line) : "";
        String blanks = " ".repeat(widths[i] - cell.length());
        text.append(i == 0 ? "" : "  ")
            .append(columns.get(i).fill() == Fill.RIGHT ? blanks + cell : cell + blanks);
      }
      lines.add(text.toString().stripTrailing());
    }
  }
}
