package kitstow.tui.view;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.report.LimitReading;
import kitstow.planner.statics.Margin;

/** The tightest reading of every limit, tightest first. */
final class LimitsTable {
  private static final double HALF = 0.5;

  private LimitsTable() {}

  /** The limits that are used to half or more, and how many others there are. */
  static List<String> most(
      List<LimitReading> readings, Subjects subjects, StateNames states, Page page) {
    List<LimitReading> most = readings.stream().filter(LimitsTable::halfUsed).toList();
    int others = readings.size() - most.size();
    List<String> lines = new ArrayList<>();
    if (!most.isEmpty() || others == 0) {
      lines.addAll(lines(most, subjects, states, page));
    }
    if (others > 0) {
      lines.addAll(
          page.paragraph(
              "",
              (most.isEmpty() ? "" : "and ")
                  + others
                  + (most.isEmpty() ? "" : " more")
                  + (others == 1 ? " limit" : " limits")
                  + " below 50 % (check --all lists them)"));
    }
    return lines;
  }

  private static boolean halfUsed(LimitReading reading) {
    return reading.margin().usedRatio() >= HALF
        || reading.margin().verdict() != Margin.Verdict.WITHIN;
  }

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
