package kitstow.tui.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import kitstow.planner.report.CheckReport;
import kitstow.planner.report.Finding;
import kitstow.planner.report.LimitReading;
import kitstow.planner.statics.Margin;
import kitstow.planner.trip.Shortfall;

/** The answer on masses in one sentence, and others where something else is wrong. */
final class Answer {
  private Answer() {}

  static List<String> lines(CheckReport report, Subjects subjects, StateNames states, Page page) {
    List<String> lines = new ArrayList<>(page.paragraph("", masses(report, subjects, states)));
    int others = 0;
    for (Finding finding : report.brokenFindings()) {
      if (report.tightest().stream().noneMatch(reading -> is(finding, reading))) {
        others++;
      }
    }
    if (others > 0) {
      lines.addAll(
          page.paragraph(
              "",
              "NOT AS IT MUST BE: "
                  + others
                  + (others == 1 ? " more breach" : " more breaches")
                  + " of rules; see the findings."));
    }
    Set<String> out = new TreeSet<>();
    for (Shortfall one : report.situation().timeline().shortfalls()) {
      out.add(one.kind().name().toLowerCase(Locale.ROOT));
    }
    if (!out.isEmpty()) {
      lines.addAll(
          page.paragraph(
              "", "RUNS OUT on the way: " + String.join(", ", out) + "; see the states."));
    }
    return lines;
  }

  private static boolean is(Finding finding, LimitReading reading) {
    return finding.rule() == reading.rule() && finding.subjectIds().contains(reading.subjectId());
  }

  private static String masses(CheckReport report, Subjects subjects, StateNames states) {
    Optional<LimitReading> tightest = report.verdict().tightest();
    if (tightest.isEmpty()) {
      return "WITHIN: no limit applies.";
    }
    LimitReading reading = tightest.get();
    Margin margin = reading.margin();
    String limit = subjects.limit(reading.rule(), reading.subjectId());
    String where =
        " of " + Figures.near(margin.limitKg(), 1) + " kg in " + states.named(reading.state().id());
    String band = Figures.loadKg(margin.rssKg());
    return switch (report.verdict().kind()) {
      case WITHIN ->
          "WITHIN: tightest is "
              + limit
              + " with "
              + Figures.marginKg(margin.marginKg())
              + " kg left (±"
              + band
              + ")"
              + where
              + ".";
      case ON_PAPER_ONLY ->
          "WITHIN ON PAPER ONLY: "
              + limit
              + " has "
              + Figures.marginKg(margin.marginKg())
              + " kg left"
              + where
              + ", but the masses may be off by ±"
              + band
              + " kg; weigh before relying on it.";
      case OVER ->
          "OVER: "
              + limit
              + " is "
              + Figures.loadKg(-margin.marginKg())
              + " kg over its limit"
              + where
              + " (±"
              + band
              + " kg).";
    };
  }
}
