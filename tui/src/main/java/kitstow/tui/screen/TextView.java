package kitstow.tui.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitstow.planner.report.CheckReport;
import kitstow.planner.report.Lever;
import kitstow.planner.report.Mend;
import kitstow.tui.app.Advice;
import kitstow.tui.app.Sheet;
import kitstow.tui.app.Work;
import kitstow.tui.view.CompareText;
import kitstow.tui.view.DifferenceText;
import kitstow.tui.view.FindingsText;
import kitstow.tui.view.HomeText;
import kitstow.tui.view.LeversText;
import kitstow.tui.view.Page;
import kitstow.tui.view.ReasonsText;
import kitstow.tui.view.RoomText;
import kitstow.tui.view.StateNames;
import kitstow.tui.view.Subjects;
import kitstow.tui.view.SuppliesText;
import kitstow.tui.widget.Area;
import kitstow.tui.widget.Frame;
import kitstow.tui.widget.Ink;
import kitstow.tui.widget.Lines;

/** Pages that are text: what stays home, room left, findings. */
final class TextView {
  private static final int MOST_COLUMNS = 118;

  private TextView() {}

  static void draw(Frame frame, Area area, Work work, List<CompareText.Column> kept) {
    Area body = area.rightOf(1).left(area.columns() - 2).belowTop(1);
    int columns = Math.min(MOST_COLUMNS, body.columns() - 2);
    List<String> lines = lines(work, new Page(columns, frame.ascii()), kept);
    if (lines.isEmpty()) {
      frame.text(body, 0, 0, "working it out ...", Ink.PLAIN);
      return;
    }
    Lines.draw(frame, body, lines, work.looking().row());
  }

  /** Lines of a page; none while what they rest on is being found. */
  private static List<String> lines(Work work, Page page, List<CompareText.Column> kept) {
    Sheet sheet = work.looking().sheet();
    if (work.report().isEmpty()) {
      return List.of();
    }
    CheckReport report = work.report().get();
    Subjects subjects = new Subjects(report.situation().loading());
    StateNames states = new StateNames(report.states());
    if (sheet == Sheet.FINDINGS) {
      return findings(report, work, page);
    }
    if (work.advice().isEmpty()) {
      return List.of();
    }
    Advice advice = work.advice().get();
    if (sheet == Sheet.ROOM) {
      return RoomText.lines(advice.room(), subjects, states, page);
    }
    if (sheet == Sheet.COMPARE) {
      return compared(work, advice, page, kept);
    }
    List<String> lines =
        new ArrayList<>(HomeText.lines(report.situation().loading(), subjects, page));
    if (!advice.home().isEmpty()) {
      lines.addAll(page.heading("Why"));
      lines.addAll(
          new ReasonsText(advice.home(), report.situation().loading(), subjects, states, page)
              .lines());
    }
    return lines;
  }

  private static List<String> compared(
      Work work, Advice advice, Page page, List<CompareText.Column> kept) {
    List<CompareText.Column> columns = new ArrayList<>(kept);
    columns.add(
        new CompareText.Column(work.design().scenario().title() + ", now", advice.figures()));
    List<String> lines = new ArrayList<>(new CompareText(columns, page).lines());
    lines.addAll(new DifferenceText(columns, page).lines());
    lines.add("");
    lines.addAll(
        page.paragraph(
            "",
            "k keeps this plan as a column, K forgets the columns; they stay while other scenarios"
                + " are opened."));
    return lines;
  }

  /** What takes load off the tightest limit, where nothing is broken. */
  private static List<String> levers(CheckReport report, Work work, Page page) {
    if (report.broken()) {
      return List.of();
    }
    Optional<List<Lever>> levers = work.advice().flatMap(Advice::levers);
    if (levers.isEmpty()) {
      return List.of("Levers on the tightest limit are being tried out ...", "");
    }
    List<String> lines = new ArrayList<>();
    if (!levers.get().isEmpty()) {
      lines.addAll(page.paragraph("", "l carries out the first lever; u takes it back."));
    }
    lines.addAll(
        LeversText.lines(report, levers.get(), new Subjects(report.situation().loading()), page));
    lines.add("");
    return lines;
  }

  /** Findings with what would mend them, once that was tried out. */
  private static List<String> findings(CheckReport report, Work work, Page page) {
    Optional<List<Mend>> mends = work.advice().flatMap(Advice::mends);
    List<String> lines = new ArrayList<>();
    if (report.broken()) {
      lines.addAll(
          page.paragraph(
              "",
              mends.isEmpty()
                  ? "What would mend it is being tried out ..."
                  : mends.get().stream().anyMatch(mend -> !mend.steps().isEmpty())
                      ? "a carries out the first mend that is told; u takes it back."
                      : "No change that would mend it was found; s searches for another plan."));
      lines.add("");
    }
    List<String> out =
        SuppliesText.lines(
            report.situation().loading(), report.situation().timeline().shortfalls(), page);
    if (!out.isEmpty()) {
      lines.addAll(out);
      lines.add("");
    }
    lines.addAll(levers(report, work, page));
    lines.addAll(
        new FindingsText(
                new Subjects(report.situation().loading()),
                new StateNames(report.states()),
                mends.orElse(List.of()),
                page,
                /* all= */ true)
            .lines(report.findings()));
    return lines;
  }
}
