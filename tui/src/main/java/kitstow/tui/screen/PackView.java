package kitstow.tui.screen;

import java.util.List;
import kitstow.planner.model.Loading;
import kitstow.tui.app.Work;
import kitstow.tui.view.PackText;
import kitstow.tui.view.Page;
import kitstow.tui.widget.Area;
import kitstow.tui.widget.Frame;
import kitstow.tui.widget.Ink;
import kitstow.tui.widget.Lines;

/** What goes in where, in which order. */
final class PackView {
  private static final int MOST_COLUMNS = 120;

  private PackView() {}

  static void draw(Frame frame, Area area, Work work) {
    Area body = area.rightOf(1).left(area.columns() - 2).belowTop(1);
    if (work.advice().isEmpty()) {
      frame.text(body, 0, 0, "working it out ...", Ink.PLAIN);
      return;
    }
    Loading loading = work.advice().get().report().situation().loading();
    Page page = new Page(Math.min(MOST_COLUMNS, body.columns() - 2), frame.ascii());
    List<String> lines = new PackText(work.advice().get().pack(), loading, page).packList();
    Lines.draw(frame, body, lines, work.looking().row());
  }
}
