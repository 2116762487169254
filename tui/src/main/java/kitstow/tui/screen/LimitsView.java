package kitstow.tui.screen;

import java.util.List;
import java.util.Optional;
import kitstow.planner.report.LimitReading;
import kitstow.planner.report.StateFigures;
import kitstow.tui.app.Work;
import kitstow.tui.view.Subjects;
import kitstow.tui.widget.Area;
import kitstow.tui.widget.Frame;
import kitstow.tui.widget.Gauge;
import kitstow.tui.widget.Ink;
import kitstow.tui.widget.Lines;

/** A gauge for every limit of a moment, the tightest first. */
final class LimitsView {
  private static final int MOST_COLUMNS = 120;

  private LimitsView() {}

  static void draw(Frame frame, Area area, Work work) {
    StateBar.draw(frame, area.bottom(1), work);
    Area body = area.rightOf(1).left(Math.min(MOST_COLUMNS, area.columns() - 2));
    Optional<StateFigures> shown = work.state();
    if (shown.isEmpty()) {
      frame.text(body, 0, 1, "judging ...", Ink.PLAIN);
      return;
    }
    List<LimitReading> limits = GaugesView.tightestFirst(shown.get());
    Subjects subjects = new Subjects(work.report().get().situation().loading());
    frame.text(body, 0, 0, "Limit", Ink.STRONG);
    frame.textRight(body, 0, "used  left kg", Ink.STRONG);
    Area rows = body.belowTop(1).aboveBottom(2);
    int first = Lines.firstFor(work.looking().row(), limits.size(), rows.rows());
    for (int y = 0; y < rows.rows() && first + y < limits.size(); y++) {
      LimitReading reading = limits.get(first + y);
      Gauge.draw(
          frame,
          rows.belowTop(y).top(1),
          subjects.limit(reading.rule(), reading.subjectId()),
          reading.margin());
    }
    Lines.more(frame, area.belowTop(1).aboveBottom(2), first, limits.size());
    frame.text(
        body.aboveBottom(1).bottom(1),
        0,
        0,
        "? less is left than the masses may be off: weigh.  ! over.  Bar: load, then how far it may"
            + " be off.",
        Ink.PLAIN);
  }
}
