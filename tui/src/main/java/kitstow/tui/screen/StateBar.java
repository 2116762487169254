package kitstow.tui.screen;

import java.util.List;
import kitstow.planner.report.StateFigures;
import kitstow.tui.app.Work;
import kitstow.tui.view.StateNames;
import kitstow.tui.widget.Area;
import kitstow.tui.widget.Frame;
import kitstow.tui.widget.Ink;

/** The moments of the trip as a row to slide along. */
final class StateBar {
  private static final int LONGEST = 24;

  private StateBar() {}

  static void draw(Frame frame, Area area, Work work) {
    List<StateFigures> states = work.states();
    int index = work.stateIndex();
    if (index < 0) {
      return;
    }
    StateFigures shown = states.get(index);
    String where = " Moment " + (index + 1) + " of " + states.size() + " ";
    int x = frame.text(area, 0, 0, where, Ink.STRONG);
    int length = Math.min(LONGEST, area.columns() / 6);
    int at = states.size() < 2 ? 0 : index * (length - 1) / (states.size() - 1);
    for (int i = 0; i < length; i++) {
      frame.sign(area, x + i, 0, i == at ? '●' : '─', i == at ? 'O' : '-', Ink.PLAIN);
    }
    x += length + 1;
    boolean decides = shown.state().id().equals(work.worstStateId());
    String text =
        StateNames.kind(shown.state()) + (decides ? ", worst: " : ": ") + shown.state().title();
    frame.text(area, x, 0, text, Ink.PLAIN);
  }
}
