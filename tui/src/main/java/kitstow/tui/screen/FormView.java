package kitstow.tui.screen;

import java.util.List;
import kitstow.tui.edit.Field;
import kitstow.tui.edit.Form;
import kitstow.tui.keys.Target;
import kitstow.tui.view.Page;
import kitstow.tui.widget.Area;
import kitstow.tui.widget.Frame;
import kitstow.tui.widget.Ink;
import kitstow.tui.widget.Lines;

/** A form being filled in, over the page. */
final class FormView {
  private static final int LEAST_TITLE = 10;
  private static final int MOST_TITLE = 34;
  private static final int HELP_ROWS = 4;
  private static final int DETAIL_ROWS = 2;

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
    detail(frame, inside.bottom(HELP_ROWS - 1).top(DETAIL_ROWS), form, rows.columns() - title - 2);
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
    boolean wrong = form.fault(field).isPresent();
    String remark = remark(form, field);
    int taken = frame.text(right, 0, 0, wrong ? cut(shown, right, remark) : shown, ink);
    frame.text(right, taken + 2, 0, remark, wrong ? Ink.BROKEN : Ink.PLAIN);
  }

  /** What is wrong with a field is seen even where the field is long. */
  private static String cut(String shown, Area area, String remark) {
    int most = Math.max(LEAST_TITLE, area.columns() - remark.length() - 2);
    return shown.length() <= most ? shown : shown.substring(0, most - 1) + "…";
  }

  private static String remark(Form form, Field field) {
    return form.fault(field)
        .map(fault -> "! " + fault)
        .orElseGet(() -> form.editor().note(form, field).orElse(""));
  }

  /** What stands in the field one is in, whole, where its row is too short for it. */
  private static void detail(Frame frame, Area area, Form form, int columns) {
    String remark = remark(form, form.field());
    if (form.text().length() + remark.length() + 6 <= columns) {
      return;
    }
    int y = 0;
    String whole = remark.isEmpty() ? form.text() : form.text() + "; " + remark;
    for (String line : Page.wrapped(whole, area.columns())) {
      frame.text(area, 0, y, line, Ink.PLAIN);
      y++;
    }
  }
}
