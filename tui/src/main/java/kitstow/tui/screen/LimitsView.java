package kitstow.tui.screen;

import java.util.List;
import java.util.Optional;
import kitstow.planner.report.CheckReport;
import kitstow.planner.report.LimitReading;
import kitstow.planner.report.StateFigures;
import kitstow.tui.app.Work;
import kitstow.tui.view.Figures;
import kitstow.tui.view.StateNames;
import kitstow.tui.view.Subjects;
import kitstow.tui.widget.Area;
import kitstow.tui.widget.Frame;
import kitstow.tui.widget.Gauge;
import kitstow.tui.widget.Ink;
import kitstow.tui.widget.Lines;

/**
 * A gauge for every limit of a moment, the tightest first, and beside it the least that is left of
 * it on the whole trip, with the moment.
 */
final class LimitsView {
  private static final int MOST_COLUMNS = 120;

  /** For the least that is left and the number of the moment. */
  private static final int LEAST_COLUMNS = 17;

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
    CheckReport report = work.report().get();
    Subjects subjects = new Subjects(report.situation().loading());
    StateNames states = new StateNames(report.states());
    Area gauges = body.left(body.columns() - LEAST_COLUMNS);
    frame.text(body, 0, 0, "Limit", Ink.STRONG);
    frame.textRight(gauges, 0, "used  left kg", Ink.STRONG);
    frame.textRight(body, 0, "least, moment", Ink.STRONG);
    Area rows = gauges.belowTop(1).aboveBottom(2);
    Area beside = body.rightOf(body.columns() - LEAST_COLUMNS).belowTop(1);
    int first = Lines.firstFor(work.looking().row(), limits.size(), rows.rows());
    for (int y = 0; y < rows.rows() && first + y < limits.size(); y++) {
      LimitReading reading = limits.get(first + y);
      Gauge.draw(
          frame,
          rows.belowTop(y).top(1),
          subjects.limit(reading.rule(), reading.subjectId()),
          reading.margin());
      frame.textRight(beside, y, least(report, states, reading), Ink.PLAIN);
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

  /** The least that is left of a limit in any moment of the trip, and in which. */
  private static String least(CheckReport report, StateNames states, LimitReading now) {
    return report.tightest().stream()
        .filter(one -> one.rule() == now.rule() && one.subjectId().equals(now.subjectId()))
        .findFirst()
        .map(
            one ->
                Figures.marginKg(one.margin().marginKg())
                    + " in "
                    + states.number(one.state().id()))
        .orElse("");
  }
}
