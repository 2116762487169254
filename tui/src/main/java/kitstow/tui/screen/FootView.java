package kitstow.tui.screen;

import kitstow.tui.app.AppState;
import kitstow.tui.keys.Binding;
import kitstow.tui.keys.KeyMap;
import kitstow.tui.keys.Target;
import kitstow.tui.widget.Area;
import kitstow.tui.widget.Frame;
import kitstow.tui.widget.Ink;

/** The lower rows: what has just happened, and the keys that matter here. */
final class FootView {
  private FootView() {}

  static void draw(Frame frame, Area area, AppState state) {
    frame.text(area.top(1), 1, 0, state.note(), Ink.STRONG);
    Area keys = area.belowTop(1);
    frame.paint(keys, Ink.BAR);
    int x = 1;
    for (Binding binding : KeyMap.in(state.place())) {
      if (binding.label().isEmpty()) {
        continue;
      }
      String text = binding.keys().get(0).shown() + " " + binding.label();
      if (x + text.length() + 1 > keys.columns()) {
        break;
      }
      int taken = frame.text(keys, x, 0, text, Ink.BAR);
      frame.target(keys.rightOf(x).left(taken), new Target.Press(binding.keys().get(0)));
      x += taken + 2;
    }
  }
}
