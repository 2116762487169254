package kitstow.tui.screen;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.model.Item;
import kitstow.tui.app.AppState;
import kitstow.tui.app.Catalogued;
import kitstow.tui.app.GearForm;
import kitstow.tui.app.Overlay;
import kitstow.tui.app.Refusals;
import kitstow.tui.app.Things;
import kitstow.tui.keys.Binding;
import kitstow.tui.keys.KeyMap;
import kitstow.tui.view.Figures;
import kitstow.tui.view.Page;
import kitstow.tui.widget.Area;
import kitstow.tui.widget.Frame;
import kitstow.tui.widget.Ink;
import kitstow.tui.widget.Lines;

/** What lies over the page. */
final class OverlayView {
  private static final int KEY_COLUMNS = 18;
  private static final int MARGIN = 4;
  private static final int MOST_COLUMNS = 96;

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
    public Area form(Overlay.Form form) {
      GearForm gear = form.form();
      List<String> lines = new ArrayList<>();
      for (int i = 0; i < GearForm.FIELDS.size(); i++) {
        GearForm.Field field = GearForm.FIELDS.get(i);
        boolean here = i == gear.at();
        boolean words = !GearForm.words(field).isEmpty();
        String text = gear.texts().get(i) + (here && !words ? "_" : "");
        lines.add(
            (here ? "> " : "  ")
                + field.title()
                + " ".repeat(Math.max(1, 10 - field.title().length()))
                + (words && here ? "< " + text + " >" : text)
                + gear.fault(field).map(fault -> "   ! " + fault).orElse(""));
      }
      lines.add("");
      lines.add("Enter takes it, Tab goes on, Del empties a field, Esc leaves it as it was");
      return box(frame, all, gear.item().title(), lines, 0);
    }

    @Override
    public Area pick(Overlay.Pick pick) {
      List<Item> found = Catalogued.found(state, pick);
      List<String> lines = new ArrayList<>(List.of("Name: " + pick.typed() + "_", ""));
      for (int i = 0; i < found.size(); i++) {
        Item item = found.get(i);
        lines.add(
            (i == pick.row() ? "> " : "  ")
                + item.title()
                + ", "
                + Figures.near(item.mass().massG() / 1000.0, 1)
                + " kg");
      }
      return box(
          frame,
          all,
          found.size() + " in the catalogue; Enter adds, Esc leaves",
          lines,
          Math.max(0, pick.row() - 6));
    }

    private List<String> wrapped(List<String> lines) {
      List<String> all = new ArrayList<>();
      int width = Math.min(MOST_COLUMNS, this.all.columns() - 2 * MARGIN) - 4;
      for (String line : lines) {
        all.addAll(Page.wrapped(line, width));
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
    int columns = Math.min(MOST_COLUMNS, all.columns() - 2 * MARGIN);
    int rows = Math.min(lines.size() + 2, all.rows() - 4);
    Area box = new Area((all.columns() - columns) / 2, (all.rows() - rows) / 2, columns, rows);
    frame.clear(box);
    for (int x = 0; x < columns; x++) {
      frame.sign(box, x, 0, '─', '-', Ink.PLAIN);
      frame.sign(box, x, rows - 1, '─', '-', Ink.PLAIN);
    }
    for (int y = 0; y < rows; y++) {
      boolean top = y == 0;
      boolean bottom = y == rows - 1;
      frame.sign(box, 0, y, top ? '┌' : bottom ? '└' : '│', top || bottom ? '+' : '|', Ink.PLAIN);
      frame.sign(
          box,
          columns - 1,
          y,
          top ? '┐' : bottom ? '┘' : '│',
          top || bottom ? '+' : '|',
          Ink.PLAIN);
    }
    frame.text(box, 2, 0, " " + title + " ", Ink.STRONG);
    Lines.draw(
        frame, new Area(box.column() + 2, box.row() + 1, columns - 4, rows - 2), lines, from);
    return box;
  }
}
