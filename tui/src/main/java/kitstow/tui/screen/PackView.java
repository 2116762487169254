package kitstow.tui.screen;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.model.Loading;
import kitstow.tui.app.PackRows;
import kitstow.tui.app.Work;
import kitstow.tui.keys.Target;
import kitstow.tui.view.PackText;
import kitstow.tui.view.Page;
import kitstow.tui.widget.Area;
import kitstow.tui.widget.Frame;
import kitstow.tui.widget.Ink;
import kitstow.tui.widget.Lines;

/** What goes in where, in which order, to be ticked off. */
final class PackView {
  private static final int MOST_COLUMNS = 120;
  private static final String OPEN = "[ ]";

  private PackView() {}

  static void draw(Frame frame, Area area, Work work) {
    Area whole = area.rightOf(1).left(area.columns() - 2);
    if (work.advice().isEmpty()) {
      frame.text(whole, 0, 1, "working it out ...", Ink.PLAIN);
      return;
    }
    Loading loading = work.advice().get().report().situation().loading();
    Page page = new Page(Math.min(MOST_COLUMNS, whole.columns() - 2), frame.ascii());
    List<String> keys = PackRows.keys(work);
    long packed = keys.stream().filter(work.packed()::contains).count();
    frame.text(whole, 0, 0, packed + " of " + keys.size() + " packed", Ink.STRONG);
    List<String> lines = new PackText(work.advice().get().pack(), loading, page).packList();
    rows(frame, whole.belowTop(1), work, lines, keys);
  }

  /** The lines about the marked row, ticks where they are. */
  private static void rows(
      Frame frame, Area body, Work work, List<String> lines, List<String> keys) {
    List<Integer> rowOfLine = new ArrayList<>();
    int marked = Math.min(work.looking().row(), Math.max(0, keys.size() - 1));
    int markedLine = 0;
    int row = -1;
    for (int i = 0; i < lines.size(); i++) {
      boolean begins = lines.get(i).startsWith(OPEN);
      row = begins ? row + 1 : row;
      boolean belongs = begins || (row >= 0 && lines.get(i).startsWith("     "));
      rowOfLine.add(belongs ? row : -1);
      markedLine = begins && row == marked ? i : markedLine;
    }
    int first = marked == 0 ? 0 : Lines.firstFor(markedLine, lines.size(), body.rows());
    for (int y = 0; y < body.rows() && first + y < lines.size(); y++) {
      int of = rowOfLine.get(first + y);
      String line = lines.get(first + y);
      boolean ticked = of >= 0 && of < keys.size() && work.packed().contains(keys.get(of));
      String shown = ticked && line.startsWith(OPEN) ? "[x]" + line.substring(3) : line;
      frame.text(body, 0, y, shown, of == marked && of >= 0 ? Ink.PICKED : Ink.PLAIN);
      if (of >= 0) {
        frame.target(body.belowTop(y).top(1), new Target.Row(of));
      }
    }
    Lines.more(frame, body, first, lines.size());
  }
}
