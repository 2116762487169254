package kitstow.tui.screen;

import java.util.List;
import java.util.Optional;
import kitstow.tui.edit.Field;
import kitstow.tui.edit.Form;
import kitstow.tui.keys.Target;
import kitstow.tui.widget.Area;
import kitstow.tui.widget.Frame;
import kitstow.tui.widget.Ink;
import kitstow.tui.widget.Lines;

/** A form being filled in, over the page. */
final class FormView {
  private static final int LEAST_TITLE = 10;
  private static final int MOST_TITLE = 34;
  private static final int HELP_ROWS = 2;

  private FormView() {}

  static Area draw(Frame frame, Area all, Form form) {
    List<Field> fields = form.editor().fields();
    Area inside = BoxView.draw(frame, all, form.editor().title(), fields.size() + HELP_ROWS);
    Area rows = inside.aboveBottom(HELP_ROWS);
    int title = LEAST_TITLE;
    for (Field field : fields) {
      title = Math.max(title, Math.min(MOST_TITLE, field.title().length() + 2));
    }
    int first = Lines.firstFor(form.at(), fields.size(), rows.rows());
    for (int y = 0; y < rows.rows() && first + y < fields.size(); y++) {
      Area row = rows.belowTop(y).top(1);
      draw(frame, row, form, first + y, title);
      frame.target(row, new Target.Row(first + y));
    }
    Lines.more(frame, rows, first, fields.size());
    frame.text(
        inside.bottom(1),
        0,
        0,
        "Enter takes it, Tab goes on, arrows choose, Del empties, Esc leaves",
        Ink.PLAIN);
    return inside;
  }

  private static void draw(Frame frame, Area row, Form form, int index, int title) {
    Field field = form.editor().fields().get(index);
    boolean here = index == form.at();
    boolean words = !field.words().isEmpty();
    frame.text(row.left(title + 1), 0, 0, (here ? "> " : "  ") + field.title(), Ink.PLAIN);
    String text = form.texts().get(index);
    String shown = here ? (words ? "< " + text + " >" : text + "_") : text;
    Area right = row.rightOf(title + 2);
    Ink ink = !here ? Ink.PLAIN : form.overwrites() ? Ink.PICKED : Ink.STRONG;
    int taken = frame.text(right, 0, 0, shown, ink);
    Optional<String> fault = form.fault(field);
    if (fault.isPresent()) {
      frame.text(right, taken + 2, 0, "! " + fault.get(), Ink.BROKEN);
    } else {
      form.editor()
          .note(form, field)
          .ifPresent(note -> frame.text(right, taken + 2, 0, note, Ink.PLAIN));
    }
  }
}
