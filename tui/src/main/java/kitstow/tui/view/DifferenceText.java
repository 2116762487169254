package kitstow.tui.view;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import kitstow.planner.model.Item;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;

/**
 * Where plans side by side differ: what is home in one and not in the other, what stands elsewhere.
 */
public final class DifferenceText {
  private static final String HOME = "home";
  private static final String NONE = "-";

  private final List<CompareText.Column> columns;
  private final Page page;

  /** Columns on a page. */
  public DifferenceText(List<CompareText.Column> columns, Page page) {
    this.columns = List.copyOf(columns);
    this.page = page;
  }

  /** A row for each piece of gear that is not alike in all columns; none for a single plan. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    if (columns.size() < 2) {
      return lines;
    }
    Table home = table();
    Table elsewhere = table();
    for (Map.Entry<String, List<String>> row : rows().entrySet()) {
      List<String> where = row.getValue();
      boolean alike = where.stream().distinct().count() == 1L;
      if (!alike) {
        List<String> cells = new ArrayList<>(List.of(row.getKey()));
        cells.addAll(where);
        boolean homeInOne = where.stream().anyMatch(cell -> cell.contains(HOME));
        (homeInOne ? home : elsewhere).row(cells.toArray(new String[0]));
      }
    }
    add(lines, "Home in one and not in the other", home);
    add(lines, "Stands elsewhere", elsewhere);
    return lines;
  }

  private Table table() {
    Table table = new Table().rest("");
    for (CompareText.Column column : columns) {
      table.rest(column.title());
    }
    return table;
  }

  private void add(List<String> lines, String title, Table table) {
    lines.addAll(page.heading(title));
    lines.addAll(table.isEmpty() ? List.of("Nothing.") : table.lines(page));
  }

  /** Where each piece is, by column; pieces of all columns in the order in which they come. */
  private Map<String, List<String>> rows() {
    Map<String, List<String>> rows = new LinkedHashMap<>();
    for (CompareText.Column column : columns) {
      for (Item item : column.loading().scenario().items()) {
        rows.computeIfAbsent(
            item.title(), title -> columns.stream().map(one -> where(one, title)).toList());
      }
    }
    return rows;
  }

  private static String where(CompareText.Column column, String title) {
    Loading loading = column.loading();
    Subjects subjects = new Subjects(loading);
    TreeSet<String> spaces = new TreeSet<>();
    int home = 0;
    for (Item item : loading.scenario().items()) {
      if (item.title().equals(title)) {
        home += HomeText.unitsHome(loading, item);
        for (int unit = 1; unit <= item.quantity(); unit++) {
          PlacedItem placed = loading.placed().get(item.keyOf(unit));
          if (placed != null) {
            spaces.add(subjects.space(placed.space()));
          }
        }
      }
    }
    List<String> words = new ArrayList<>();
    if (home > 0) {
      words.add(home + " at " + HOME);
    }
    words.addAll(spaces);
    return words.isEmpty() ? NONE : String.join("; ", words);
  }
}
