package kitstow.tui.screen;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import kitstow.planner.report.CheckReport;
import kitstow.planner.report.LimitReading;
import kitstow.planner.report.StateFigures;
import kitstow.tui.app.Work;
import kitstow.tui.view.Figures;
import kitstow.tui.view.Subjects;
import kitstow.tui.widget.Area;
import kitstow.tui.widget.Frame;
import kitstow.tui.widget.Gauge;
import kitstow.tui.widget.Ink;

/** Gauges of a state, the tightest first, under its axle loads and moment. */
final class GaugesView {
  private static final int HEAD_ROWS = 3;

  private GaugesView() {}

  static void draw(Frame frame, Area area, Work work) {
    Optional<StateFigures> shown = work.state();
    if (shown.isEmpty()) {
      frame.text(area, 0, 0, "judging ...", Ink.PLAIN);
      return;
    }
    StateFigures figures = shown.get();
    head(frame, area, figures, work);
    List<LimitReading> limits = tightestFirst(figures);
    Subjects subjects = new Subjects(work.report().get().situation().loading());
    Area rows = area.belowTop(HEAD_ROWS);
    int shownLimits = 0;
    int y = 0;
    // One row is kept for what is not shown.
    while (shownLimits < limits.size() && y < rows.rows() - 1) {
      LimitReading reading = limits.get(shownLimits);
      y +=
          Gauge.draw(
              frame,
              rows.belowTop(y).aboveBottom(1),
              subjects.limit(reading.rule(), reading.subjectId()),
              reading.margin());
      shownLimits++;
    }
    if (limits.isEmpty()) {
      frame.text(rows, 0, 0, "No limit applies in this moment.", Ink.PLAIN);
    } else if (shownLimits < limits.size()) {
      frame.text(
          rows,
          0,
          rows.rows() - 1,
          "and " + (limits.size() - shownLimits) + " more: 2 Limits",
          Ink.PLAIN);
    }
  }

  /** Readings of a state by the share that is used. */
  static List<LimitReading> tightestFirst(StateFigures figures) {
    List<LimitReading> limits = new ArrayList<>(figures.limits());
    limits.sort(
        Comparator.comparingDouble((LimitReading one) -> one.margin().usedRatio()).reversed());
    return limits;
  }

  /** The floor, beside the moment that it is the floor of. */
  private static String floor(StateFigures figures, Work work) {
    boolean largest =
        work.judged()
            && work.report()
                .flatMap(CheckReport::worstMoment)
                .map(worst -> worst.state().id())
                .filter(figures.state().id()::equals)
                .isPresent();
    return largest && work.floorNm().isPresent()
        ? ", floor " + Figures.near(Math.floor(work.floorNm().getAsDouble()), 0)
        : "";
  }

  private static void head(Frame frame, Area area, StateFigures figures, Work work) {
    frame.text(
        area,
        0,
        0,
        Figures.wholeLoadKg(figures.axles().totalKg())
            + " kg: front "
            + Figures.wholeLoadKg(figures.axles().frontKg())
            + " rear "
            + Figures.wholeLoadKg(figures.axles().rearKg())
            + (work.judged() ? "" : " ..."),
        Ink.PLAIN);
    frame.text(
        area,
        0,
        1,
        "Moment "
            + Figures.near(Math.ceil(figures.moment().newtonMetres()), 0)
            + " N·m"
            + floor(figures, work),
        Ink.PLAIN);
    frame.text(area, 0, 2, "Limit", Ink.STRONG);
    frame.textRight(area, 2, area.columns() < 40 ? "left kg" : "used  left kg", Ink.STRONG);
  }
}
