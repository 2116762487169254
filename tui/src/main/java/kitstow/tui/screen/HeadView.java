package kitstow.tui.screen;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import kitstow.planner.report.CheckReport;
import kitstow.planner.report.Finding;
import kitstow.planner.report.LimitReading;
import kitstow.planner.statics.Margin;
import kitstow.tui.app.Activity;
import kitstow.tui.app.Sheet;
import kitstow.tui.app.Work;
import kitstow.tui.keys.KeyPress;
import kitstow.tui.keys.Target;
import kitstow.tui.view.Answer;
import kitstow.tui.view.Figures;
import kitstow.tui.view.FindingsText;
import kitstow.tui.view.StateNames;
import kitstow.tui.view.Subjects;
import kitstow.tui.widget.Area;
import kitstow.tui.widget.Frame;
import kitstow.tui.widget.Ink;

/** The upper rows: what is open, the answer, the pages. */
final class HeadView {
  /** From this width on the names of the pages stand farther apart. */
  private static final int ROOMY = 100;

  private HeadView() {}

  static void draw(Frame frame, Area area, Work work) {
    title(frame, area.top(1), work);
    answer(frame, area.belowTop(1).top(1), work);
    tabs(frame, area.belowTop(2).top(1), work.looking().sheet());
  }

  private static void title(Frame frame, Area area, Work work) {
    frame.paint(area, Ink.BAR);
    frame.text(area, 1, 0, work.design().scenario().title(), Ink.BAR);
    int aboard = work.loading().placed().size();
    int home = work.loading().home().size();
    String count =
        (work.unsaved() ? "not saved, " : "") + aboard + " aboard, " + home + " at home ";
    frame.textRight(area, 0, "  " + count, Ink.BAR);
  }

  private static void answer(Frame frame, Area area, Work work) {
    if (work.searching().isPresent()) {
      searching(frame, area, work, work.searching().get());
      return;
    }
    if (work.report().isEmpty()) {
      frame.text(area, 1, 0, "judging ...", Ink.PLAIN);
      return;
    }
    CheckReport report = work.report().get();
    String word = " " + Answer.inBrief(report).toUpperCase(Locale.ROOT) + " ";
    int taken = 1 + frame.text(area, 1, 0, word, ink(report));
    String out = Answer.shortOf(report);
    String why = (out.isEmpty() ? "" : "RUNS OUT: " + out + "; ") + why(report);
    frame.text(area, taken + 1, 0, why + (work.judged() ? "" : " ..."), Ink.PLAIN);
  }

  /** How a search stands. */
  private static void searching(Frame frame, Area area, Work work, Activity.Searching search) {
    int taken =
        1 + frame.text(area, 1, 0, search.stopping() ? " STOPPING " : " SEARCHING ", Ink.PICKED);
    String floor =
        work.floorNm().isPresent()
            ? ", floor " + Figures.near(Math.floor(work.floorNm().getAsDouble()), 0)
            : "";
    String best =
        search.unitsHome() < 0
            ? "packing for the first time"
            : "best so far: "
                + search.unitsHome()
                + " at home, moment "
                + Figures.near(Math.ceil(search.momentNm()), 0)
                + floor
                + " N·m";
    frame.text(
        area,
        taken + 1,
        0,
        Figures.near(search.seconds(), 0)
            + " of "
            + Figures.near(search.limitSeconds(), 0)
            + " s, "
            + best,
        Ink.PLAIN);
  }

  /** What decides the answer. */
  private static String why(CheckReport report) {
    Subjects subjects = new Subjects(report.situation().loading());
    StateNames states = new StateNames(report.states());
    Optional<LimitReading> tightest = report.verdict().tightest();
    List<Finding> broken = report.brokenFindings();
    if (!broken.isEmpty() && report.verdict().kind() != Margin.Verdict.OVER) {
      return broken.size()
          + (broken.size() == 1 ? " breach: " : " breaches, first: ")
          + FindingsText.sentence(broken.get(0), subjects);
    }
    return tightest.map(reading -> inWords(reading, subjects, states)).orElse("no limit applies")
        + (broken.size() > 1 ? "; " + (broken.size() - 1) + " more broken" : "");
  }

  private static String inWords(LimitReading reading, Subjects subjects, StateNames states) {
    Margin margin = reading.margin();
    boolean over = margin.verdict() == Margin.Verdict.OVER;
    return (over
            ? Figures.loadKg(-margin.marginKg()) + " kg over"
            : Figures.marginKg(margin.marginKg()) + " kg left")
        + " ±"
        + Figures.loadKg(margin.rssKg())
        + " in moment "
        + states.number(reading.state().id())
        + ": "
        + subjects.limit(reading.rule(), reading.subjectId());
  }

  /** The ink of a report's answer. */
  static Ink ink(CheckReport report) {
    if (report.broken()) {
      return Ink.BROKEN;
    }
    return report.verdict().kind() == Margin.Verdict.WITHIN ? Ink.WITHIN : Ink.DOUBT;
  }

  private static void tabs(Frame frame, Area area, Sheet open) {
    int gap = area.columns() < ROOMY ? 1 : 2;
    int x = gap;
    for (Sheet sheet : List.of(Sheet.values())) {
      String number = String.valueOf(sheet.number());
      boolean here = sheet == open;
      Ink ink = here ? Ink.STRONG : Ink.PLAIN;
      int taken = frame.text(area, x, 0, number + " " + sheet.title(), ink);
      if (here) {
        frame.text(area, x - 1, 0, "[", ink);
        frame.text(area, x + taken, 0, "]", ink);
      }
      frame.target(
          area.rightOf(x).left(taken), new Target.Press(KeyPress.sign(number.codePointAt(0))));
      x += taken + gap;
    }
  }
}
