package kitstow.tui.screen;

import java.util.List;
import java.util.Locale;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.Item;
import kitstow.planner.model.Need;
import kitstow.tui.app.Work;
import kitstow.tui.keys.Target;
import kitstow.tui.view.Figures;
import kitstow.tui.widget.Area;
import kitstow.tui.widget.Frame;
import kitstow.tui.widget.Ink;
import kitstow.tui.widget.Lines;

/** The gear list: what there is, how heavy, how large, how many, how much wanted. */
final class GearView {
  private static final int FIGURES_COLUMNS = 45;
  private static final int MOST_COLUMNS = 110;

  private GearView() {}

  static void draw(Frame frame, Area area, Work work) {
    Area body = area.rightOf(1).left(Math.min(MOST_COLUMNS, area.columns() - 2));
    List<Item> items = work.design().scenario().items();
    int name = body.columns() - FIGURES_COLUMNS;
    frame.text(body, 2, 0, "Gear", Ink.STRONG);
    figures(frame, body, name, "kg", "± kg", "size mm", "aboard", "need", Ink.STRONG);
    Area rows = body.belowTop(1);
    int marked = Math.min(work.looking().row(), Math.max(0, items.size() - 1));
    int first = Lines.firstFor(marked, items.size(), rows.rows());
    for (int y = 0; y < rows.rows() && first + y < items.size(); y++) {
      Item item = items.get(first + y);
      boolean here = first + y == marked;
      Ink ink = here ? Ink.PICKED : Ink.PLAIN;
      Area row = rows.belowTop(y).top(1);
      if (here) {
        frame.paint(row, Ink.PICKED);
      }
      frame.text(row.left(name), 0, 0, (here ? "> " : "  ") + item.title(), ink);
      SizeMm size = item.shapes().get(0);
      figures(
          frame,
          row,
          name,
          Figures.near(item.mass().massG() / 1000.0, 1),
          Figures.loadKg(item.mass().toleranceG() / 1000.0),
          size.lengthMm() + "x" + size.widthMm() + "x" + size.heightMm(),
          aboard(work, item) + " of " + item.quantity(),
          (item.need() == Need.MUST ? "MUST" : item.need().name().toLowerCase(Locale.ROOT))
              + (item.pin().isPresent() ? " pin" : ""),
          ink);
      frame.target(row, new Target.Row(first + y));
    }
    if (items.isEmpty()) {
      frame.text(rows, 2, 0, "None yet: n adds from the catalogue, i reads a table.", Ink.PLAIN);
    }
    Lines.more(frame, rows, first, items.size());
  }

  private static int aboard(Work work, Item item) {
    int aboard = 0;
    for (int unit = 1; unit <= item.quantity(); unit++) {
      aboard += work.loading().placed().containsKey(item.keyOf(unit)) ? 1 : 0;
    }
    return aboard;
  }

  private static void figures(
      Frame frame,
      Area row,
      int from,
      String kg,
      String tolerance,
      String size,
      String aboard,
      String need,
      Ink ink) {
    frame.textRight(row.rightOf(from).left(6), 0, kg, ink);
    frame.textRight(row.rightOf(from + 6).left(6), 0, tolerance, ink);
    frame.textRight(row.rightOf(from + 12).left(15), 0, size, ink);
    frame.textRight(row.rightOf(from + 27).left(9), 0, aboard, ink);
    frame.text(row.rightOf(from + 37), 0, 0, need, ink);
  }
}
