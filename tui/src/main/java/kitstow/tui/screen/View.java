package kitstow.tui.screen;

import kitstow.tui.app.AppState;
import kitstow.tui.app.Size;
import kitstow.tui.app.Work;
import kitstow.tui.widget.Area;
import kitstow.tui.widget.Frame;
import kitstow.tui.widget.Ink;

/** The whole screen. */
public final class View {
  private static final int HEAD_ROWS = 3;
  private static final int FOOT_ROWS = 2;

  private View() {}

  /** Draws a state. */
  public static Frame draw(AppState state) {
    Size size = state.size();
    Frame frame = new Frame(size.columns(), size.rows(), state.ascii());
    if (!size.enough()) {
      tooSmall(frame, size);
      return frame;
    }
    Area all = frame.area();
    Area body = all.belowTop(HEAD_ROWS).aboveBottom(FOOT_ROWS);
    if (state.work().isPresent()) {
      HeadView.draw(frame, all.top(HEAD_ROWS), state.work().get());
      sheet(frame, body, state.work().get(), state);
    } else {
      ShelfView.draw(frame, all.aboveBottom(FOOT_ROWS), state.shelf());
    }
    FootView.draw(frame, all.bottom(FOOT_ROWS), state);
    OverlayView.draw(frame, all, state);
    return frame;
  }

  private static void sheet(Frame frame, Area body, Work work, AppState state) {
    switch (work.looking().sheet()) {
      case LOAD -> LoadView.draw(frame, body, work);
      case LIMITS -> LimitsView.draw(frame, body, work);
      case PACK -> PackView.draw(frame, body, work);
      case GEAR -> GearView.draw(frame, body, work);
      case TRIP, UTE -> EditView.draw(frame, body, work);
      case HOME, ROOM, FINDINGS, COMPARE -> TextView.draw(frame, body, work, state.kept());
    }
  }

  private static void tooSmall(Frame frame, Size size) {
    frame.text(frame.area(), 0, 0, "kitstow needs 80x24 cells,", Ink.STRONG);
    frame.text(
        frame.area(),
        0,
        1,
        "this is " + size.columns() + "x" + size.rows() + ". Enlarge it.",
        Ink.PLAIN);
  }
}
