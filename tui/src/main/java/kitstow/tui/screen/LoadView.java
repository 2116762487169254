package kitstow.tui.screen;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import kitstow.planner.report.Finding;
import kitstow.planner.report.StateFigures;
import kitstow.tui.app.Looking;
import kitstow.tui.app.Work;
import kitstow.tui.widget.Area;
import kitstow.tui.widget.Frame;
import kitstow.tui.widget.LoadPictures;

/** The load in pictures, with the facts of what is chosen and the gauges of a state. */
final class LoadView {
  private static final int NARROW = 34;
  private static final int USUAL = 44;
  private static final int WIDE = 60;
  private static final int FACT_ROWS = 9;

  private LoadView() {}

  static void draw(Frame frame, Area area, Work work) {
    Area body = area.aboveBottom(1);
    int panel = area.columns() < 110 ? NARROW : area.columns() < 160 ? USUAL : WIDE;
    Area pictures = body.left(body.columns() - panel - 2);
    Area side = body.rightOf(body.columns() - panel);
    Looking looking = work.looking();
    LoadPictures.draw(
        frame,
        pictures,
        new LoadPictures.Subject(
            work.loading(),
            work.drawnState(),
            work.judged() ? work.state().map(StateFigures::centre) : Optional.empty(),
            looking.eye(),
            looking.zoom(),
            looking.panAcross(),
            looking.panUp(),
            looking.chosen(),
            broken(work)));
    int facts = FactsView.draw(frame, side.top(side.rows() - 4), work);
    Area gauges = side.belowTop(Math.max(facts, Math.min(FACT_ROWS, side.rows() / 3)) + 1);
    GaugesView.draw(frame, gauges, work);
    StateBar.draw(frame, area.bottom(1), work);
  }

  /** Things that break a rule. */
  private static Set<String> broken(Work work) {
    Set<String> broken = new HashSet<>();
    if (work.judged()) {
      for (Finding finding : work.report().get().brokenFindings()) {
        broken.addAll(finding.subjectIds());
      }
    }
    return broken;
  }
}
