package kitstow.tui.screen;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.model.Bay;
import kitstow.tui.app.EditRow;
import kitstow.tui.app.EditRows;
import kitstow.tui.app.Sheet;
import kitstow.tui.app.Work;
import kitstow.tui.edit.Bays;
import kitstow.tui.keys.Target;
import kitstow.tui.view.Page;
import kitstow.tui.widget.Area;
import kitstow.tui.widget.Frame;
import kitstow.tui.widget.Ink;
import kitstow.tui.widget.Lines;

/** Pages of things to edit, in groups with a heading each. */
final class EditView {
  private static final int MOST_COLUMNS = 130;
  private static final int LEAST_NAME = 24;

  /** A line of the page; one that belongs to no row stands under -1. */
  private record Line(int row, int part, String name, String facts) {
    static Line text(String text) {
      return new Line(-1, 0, text, "");
    }
  }

  private EditView() {}

  static void draw(Frame frame, Area area, Work work) {
    Area body = area.rightOf(1).left(Math.min(MOST_COLUMNS, area.columns() - 2));
    List<EditRow> rows = EditRows.of(work);
    int marked = Math.min(work.looking().row(), rows.size() - 1);
    int name = Math.max(LEAST_NAME, body.columns() * 2 / 5);
    List<Line> lines = lines(work, rows, name, body.columns() - name - 1);
    int at = 0;
    for (int i = 0; i < lines.size(); i++) {
      at = lines.get(i).row() == marked ? i : at;
    }
    int first = marked == 0 ? 0 : Lines.firstFor(at, lines.size(), body.rows());
    for (int y = 0; y < body.rows() && first + y < lines.size(); y++) {
      Line line = lines.get(first + y);
      Area row = body.belowTop(y).top(1);
      if (line.row() < 0) {
        frame.text(row, 0, 0, line.name(), line.name().startsWith(" ") ? Ink.PLAIN : Ink.STRONG);
      } else {
        draw(frame, row, line, line.row() == marked, name);
        frame.target(row, new Target.Row(line.row()));
      }
    }
    Lines.more(frame, area, first, lines.size());
  }

  private static List<Line> lines(Work work, List<EditRow> rows, int nameColumns, int factColumns) {
    List<Line> lines = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      boolean begins = i == 0 || rows.get(i - 1).part() != rows.get(i).part();
      if (begins) {
        if (i > 0) {
          lines.add(Line.text(""));
        }
        lines.add(Line.text(rows.get(i).part().title()));
      }
      EditText text = EditText.of(work.design(), rows.get(i));
      List<String> names = Page.wrapped(text.name(), nameColumns - 3);
      List<String> facts = Page.wrapped(text.facts(), factColumns);
      for (int y = 0; y < Math.max(names.size(), facts.size()); y++) {
        lines.add(new Line(i, y, part(names, y), part(facts, y)));
      }
    }
    if (work.looking().sheet() == Sheet.UTE) {
      empty(work, factColumns).forEach(text -> lines.add(Line.text(text)));
    }
    return lines;
  }

  private static String part(List<String> texts, int at) {
    return at < texts.size() ? texts.get(at) : "";
  }

  /** The bays that nothing stands in or reaches into. */
  private static List<String> empty(Work work, int columns) {
    Bays bays = new Bays(work.design());
    List<String> names = new ArrayList<>();
    for (Bay bay : work.loading().rig().bays().values()) {
      if (bays.isFree(bay)) {
        names.add(bays.name(bay.id()));
      }
    }
    List<String> lines = new ArrayList<>();
    if (!names.isEmpty()) {
      lines.addAll(List.of("", "Empty bays"));
      Page.wrapped(String.join("; ", names), columns).forEach(line -> lines.add("  " + line));
    }
    return lines;
  }

  private static void draw(Frame frame, Area row, Line line, boolean here, int name) {
    Ink ink = here ? Ink.PICKED : Ink.PLAIN;
    if (here) {
      frame.paint(row, Ink.PICKED);
    }
    String lead = here && line.part() == 0 ? "> " : "  ";
    frame.text(row.left(name), 0, 0, lead + line.name(), ink);
    frame.text(row.rightOf(name + 1), 0, 0, line.facts(), ink);
  }
}
