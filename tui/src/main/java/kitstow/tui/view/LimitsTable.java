package kitstow.tui.view;

import java.util.List;
import kitstow.planner.report.LimitReading;
import kitstow.planner.statics.Margin;

/** The tightest reading of every limit, tightest first. */
final class LimitsTable {
  private LimitsTable() {}

  static List<String> lines(
      List<LimitReading> readings, Subjects subjects, StateNames states, Page page) {
    Table table =
        new Table()
            .rest("Limit")
            .figures("Load kg")
            .figures("Limit kg")
            .figures("Margin")
            .figures("Band")
            .figures("Used")
            .figures("State")
            .words("");
    for (LimitReading reading : readings) {
      Margin margin = reading.margin();
      table.row(
          subjects.limit(reading.rule(), reading.subjectId()),
          Figures.loadKg(margin.loadKg()),
          Figures.near(margin.limitKg(), 1),
          Figures.marginKg(margin.marginKg()),
          Figures.loadKg(margin.rssKg()),
          Figures.usedPercent(margin.usedRatio()),
          states.number(reading.state()),
          mark(margin.verdict()));
    }
    return table.lines(page);
  }

  private static String mark(Margin.Verdict verdict) {
    return switch (verdict) {
      case WITHIN -> "";
      case ON_PAPER_ONLY -> "weigh";
      case OVER -> "OVER";
    };
  }
}
