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
public final class Answer {
  private static final String NOT_RIGHT = "NOT AS IT MUST BE: ";

  private Answer() {}

  /** The answer as sentences, each broken into lines. */
  public static List<String> lines(
      CheckReport report, Subjects subjects, StateNames states, Page page) {
    String masses = masses(report, subjects, states);
    List<Finding> broken = report.brokenFindings();
    List<String> lines = new ArrayList<>();
    if (broken.isEmpty()) {
      lines.addAll(page.paragraph("", masses));
    } else if (report.verdict().kind() == Margin.Verdict.OVER) {
      lines.addAll(page.paragraph("", masses));
      LimitReading told = report.verdict().tightest().orElseThrow();
      List<Finding> others = broken.stream().filter(finding -> !is(finding, told)).toList();
      if (!others.isEmpty()) {
        String what = count(others.size(), " more breach", " more breaches") + " of rules";
        lines.addAll(page.paragraph("", NOT_RIGHT + what + first(others, subjects) + "."));
      }
    } else {
      String what = count(report.brokenRules(), " rule", " rules") + " broken";
      String often =
          broken.size() > report.brokenRules() ? ", " + broken.size() + " times in all" : "";
      lines.addAll(
          page.paragraph(
              "", NOT_RIGHT + what + often + first(broken, subjects) + "; masses " + masses));
    }
    int overridden = report.overriddenFindings().size();
    if (overridden > 0) {
      lines.addAll(
          page.paragraph(
              "",
              "NOT KEPT for a written reason: "
                  + count(overridden, " finding", " findings")
                  + first(report.overriddenFindings(), subjects)
                  + "; see the findings."));
    }
    lines.addAll(shortfalls(report, page));
    return lines;
  }

  /** What runs out, and what there never was. */
  private static List<String> shortfalls(CheckReport report, Page page) {
    Set<String> out = new TreeSet<>();
    Set<String> unnamed = new TreeSet<>();
    for (Shortfall one : report.situation().timeline().shortfalls()) {
      boolean named = SuppliesText.isNamed(report.situation().loading(), one.kind());
      (named ? out : unnamed).add(one.kind().name().toLowerCase(Locale.ROOT));
    }
    List<String> lines = new ArrayList<>();
    if (!out.isEmpty()) {
      lines.addAll(
          page.paragraph(
              "", "RUNS OUT on the way: " + String.join(", ", out) + "; see the states."));
    }
    if (!unnamed.isEmpty()) {
      lines.addAll(
          page.paragraph(
              "", "NO SUPPLY named: " + String.join(", ", unnamed) + "; see the states."));
    }
    return lines;
  }

  /** What runs out on the way and what nothing is named for, in a word or two; "" if nothing. */
  public static String shortOf(CheckReport report) {
    Set<String> kinds = new TreeSet<>();
    for (Shortfall one : report.situation().timeline().shortfalls()) {
      kinds.add(one.kind().name().toLowerCase(Locale.ROOT));
    }
    return String.join(", ", kinds);
  }

  /** The answer in a word or two. */
  public static String inBrief(CheckReport report) {
    int overridden = report.overriddenFindings().size();
    return word(report)
        + (overridden > 0 ? ", " + count(overridden, " finding", " findings") + " not kept" : "");
  }

  private static String word(CheckReport report) {
    boolean over = report.verdict().kind() == Margin.Verdict.OVER;
    if (report.broken() && !over) {
      return "NOT AS IT MUST BE";
    }
    return switch (report.verdict().kind()) {
      case WITHIN -> "within";
      case ON_PAPER_ONLY -> "within on paper only";
      case OVER -> "OVER";
    };
  }

  private static String count(int count, String one, String several) {
    return count + (count == 1 ? one : several);
  }

  /** The first of some breaches in words. */
  private static String first(List<Finding> breaches, Subjects subjects) {
    String first = FindingsText.sentence(breaches.get(0), subjects);
    int details = first.indexOf("; ");
    return " ("
        + (breaches.size() > 1 ? "first: " : "")
        + (details < 0 ? first : first.substring(0, details))
        + ")";
  }

  private static boolean is(Finding finding, LimitReading reading) {
    return finding.rule() == reading.rule() && finding.subjectIds().contains(reading.subjectId());
  }

  private static String masses(CheckReport report, Subjects subjects, StateNames states) {
    Optional<LimitReading> tightest = report.verdict().tightest();
    boolean alone = !report.broken();
    if (tightest.isEmpty()) {
      return alone ? "WITHIN: no limit applies." : "not judged, no limit applies.";
    }
    LimitReading reading = tightest.get();
    Margin margin = reading.margin();
    String limit = subjects.limit(reading.rule(), reading.subjectId());
    String where =
        " of " + Figures.near(margin.limitKg(), 1) + " kg in " + states.named(reading.state().id());
    String band = Figures.loadKg(margin.rssKg());
    return switch (report.verdict().kind()) {
      case WITHIN ->
          (alone ? "WITHIN: tightest is " : "within, tightest is ")
              + limit
              + " with "
              + Figures.marginKg(margin.marginKg())
              + " kg left (±"
              + band
              + ")"
              + where
              + ".";
      case ON_PAPER_ONLY ->
          (alone ? "WITHIN ON PAPER ONLY: " : "within on paper only: ")
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
