package kitstow.tui.screen;

import java.util.ArrayList;
import java.util.List;
import kitstow.tui.app.AppState;
import kitstow.tui.app.Overlay;
import kitstow.tui.app.Refusals;
import kitstow.tui.app.Things;
import kitstow.tui.keys.Binding;
import kitstow.tui.keys.KeyMap;
import kitstow.tui.view.Page;
import kitstow.tui.widget.Area;
import kitstow.tui.widget.Frame;
import kitstow.tui.widget.Ink;
import kitstow.tui.widget.Lines;

/** What lies over the page. */
final class OverlayView {
  private static final int KEY_COLUMNS = 18;

  private OverlayView() {}

  static void draw(Frame frame, Area all, AppState state) {
    state.overlay().read(new Drawing(frame, all, state));
  }

  private record Drawing(Frame frame, Area all, AppState state) implements Overlay.Reader<Area> {
    @Override
    public Area none() {
      return all;
    }

    @Override
    public Area keys(Overlay.Keys keys) {
      List<String> lines = new ArrayList<>();
      for (Binding binding : KeyMap.in(state.place())) {
        String shown = binding.shownKeys();
        lines.add(
            shown
                + " ".repeat(Math.max(1, KEY_COLUMNS - shown.length()))
                + binding.help()
                + Refusals.why(state, binding.action())
                    .map(reason -> " - not now: " + reason)
                    .orElse(""));
      }
      return box(frame, all, "Keys here; any key closes", lines, keys.row());
    }

    @Override
    public Area find(Overlay.Find find) {
      return OverlayView.find(frame, all.aboveBottom(1).bottom(1), state, find);
    }

    @Override
    public Area told(Overlay.Told told) {
      return box(frame, all, told.title() + "; any key closes", wrapped(told.lines()), 0);
    }

    @Override
    public Area ask(Overlay.Ask ask) {
      List<String> lines = new ArrayList<>();
      lines.add("Enter  " + ask.yes());
      lines.add("n      " + ask.no());
      if (ask.about().isEmpty()) {
        lines.add("Esc    stay");
      }
      return box(frame, all, ask.question(), lines, 0);
    }

    @Override
    public Area editing(Overlay.Editing editing) {
      return FormView.draw(frame, all, editing.form());
    }

    @Override
    public Area begin(Overlay.Begin begin) {
      return FormView.draw(frame, all, begin.form());
    }

    @Override
    public Area fileName(Overlay.FileName fileName) {
      List<String> lines =
          List.of(
              "File: " + fileName.typed() + "_",
              "",
              "Beside the scenario, or with its folder. Columns title, lengthMm, widthMm, heightMm and"
                  + " massKg will do; any other that kitstow gear SCENARIO --csv writes may be there.",
              "",
              "Gear known by its id or title takes the figures of its row, all else is added.");
      return box(frame, all, "Gear from a table; Enter reads it, Esc leaves", wrapped(lines), 0);
    }

    @Override
    public Area pick(Overlay.Pick pick) {
      return PickView.draw(frame, all, state, pick);
    }

    private List<String> wrapped(List<String> lines) {
      List<String> all = new ArrayList<>();
      for (String line : lines) {
        all.addAll(Page.wrapped(line, BoxView.textColumns(this.all)));
      }
      return all;
    }
  }

  private static Area find(Frame frame, Area row, AppState state, Overlay.Find find) {
    frame.clear(row);
    int taken = frame.text(row, 1, 0, "Find: " + find.typed(), Ink.STRONG);
    frame.text(row, 1 + taken, 0, " ", Ink.PICKED);
    List<String> named =
        state.work().map(work -> Things.named(work.loading(), find.typed())).orElse(List.of());
    String found =
        find.typed().isEmpty()
            ? "a part of a name"
            : named.isEmpty()
                ? "nothing has that name"
                : named.size() == 1 ? "one found" : named.size() + " found; Down for the next";
    frame.text(row, taken + 4, 0, found, Ink.PLAIN);
    return row;
  }

  private static Area box(Frame frame, Area all, String title, List<String> lines, int from) {
    Area inside = BoxView.draw(frame, all, title, lines.size());
    Lines.draw(frame, inside, lines, from);
    return inside;
  }
}
