package kitstow.tui.screen;

import java.util.List;
import kitstow.planner.geometry.SizeMm;
import kitstow.tui.app.AppState;
import kitstow.tui.app.Catalogued;
import kitstow.tui.app.Overlay;
import kitstow.tui.keys.Target;
import kitstow.tui.view.Figures;
import kitstow.tui.widget.Area;
import kitstow.tui.widget.Frame;
import kitstow.tui.widget.Ink;
import kitstow.tui.widget.Lines;

/** Things of the catalogue to pick one from. */
final class PickView {
  private static final int FIGURES_COLUMNS = 28;
  private static final int MASS_COLUMNS = 10;
  private static final int HEAD_ROWS = 2;

  private PickView() {}

  static Area draw(Frame frame, Area all, AppState state, Overlay.Pick pick) {
    List<Catalogued.Entry> found = Catalogued.found(state, pick);
    Area inside =
        BoxView.draw(
            frame,
            all,
            found.size() + " in the catalogue; Enter takes one, Esc leaves",
            found.size() + HEAD_ROWS);
    frame.text(inside, 0, 0, "Name: " + pick.typed() + "_", Ink.STRONG);
    Area rows = inside.belowTop(HEAD_ROWS);
    int first = Lines.firstFor(pick.row(), found.size(), rows.rows());
    for (int y = 0; y < rows.rows() && first + y < found.size(); y++) {
      Area row = rows.belowTop(y).top(1);
      boolean here = first + y == pick.row();
      Ink ink = here ? Ink.PICKED : Ink.PLAIN;
      Catalogued.Entry entry = found.get(first + y);
      frame.text(
          row.left(row.columns() - FIGURES_COLUMNS),
          0,
          0,
          (here ? "> " : "  ") + entry.title(),
          ink);
      SizeMm size = entry.size();
      Area figures = row.rightOf(row.columns() - FIGURES_COLUMNS);
      frame.textRight(
          figures.left(MASS_COLUMNS), 0, Figures.near(entry.massG() / 1000.0, 1) + " kg", ink);
      frame.textRight(
          figures.left(FIGURES_COLUMNS - 1),
          0,
          size.lengthMm() + "x" + size.widthMm() + "x" + size.heightMm(),
          ink);
      frame.target(row, new Target.Row(first + y));
    }
    Lines.more(frame, rows, first, found.size());
    return inside;
  }
}
