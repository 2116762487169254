package kitstow.tui.app;

import java.util.List;
import kitstow.tui.edit.Design;
import kitstow.tui.edit.Editor;
import kitstow.tui.edit.Form;
import kitstow.tui.edit.Tidy;
import kitstow.tui.keys.KeyPress;

/** Filling in a form. */
final class FormUpdate {
  private FormUpdate() {}

  static Step open(AppState state, Editor editor) {
    return shown(state, Form.of(editor));
  }

  private static Step shown(AppState state, Form form) {
    return Step.to(state.with(new Overlay.Editing(form)));
  }

  static Step pressed(AppState state, Form form, KeyPress key) {
    String text = form.text();
    boolean words = !form.field().words().isEmpty();
    return switch (key.key()) {
      case ESCAPE -> Step.to(state.with(Overlay.NONE).saying("Not changed."));
      case TAB, DOWN -> shown(state, form.in(form.at() + 1));
      case BACK_TAB, UP -> shown(state, form.in(form.at() - 1));
      case LEFT -> shown(state, form.turned(-1));
      case RIGHT -> shown(state, form.turned(1));
      case BACKSPACE -> shown(state, words ? form : form.with(shorter(text)));
      case DELETE -> shown(state, words ? form : form.with(""));
      case SIGN -> {
        String sign = Character.toString(key.sign());
        yield shown(state, words ? form.turnedTo(sign) : form.typed(sign));
      }
      case ENTER -> taken(state, form);
      default -> Step.to(state);
    };
  }

  static String shorter(String text) {
    return text.isEmpty() ? text : text.substring(0, text.offsetByCodePoints(text.length(), -1));
  }

  private static Step taken(AppState state, Form form) {
    if (!form.sound() || state.work().isEmpty()) {
      return Step.to(state.saying("Put right what is marked first, or Esc to leave it."));
    }
    Design after = form.editor().after(state.work().get().design(), form);
    return done(state, form.editor().deed(), after);
  }

  /** Does it, unless it makes a scenario that could not be read again. */
  static Step done(AppState state, String what, Design after) {
    Work work = state.work().orElseThrow();
    if (after.equals(work.design())) {
      return Step.to(state.with(Overlay.NONE).saying("Nothing has changed."));
    }
    List<String> faults = Tidy.faults(after.scenario());
    if (!faults.isEmpty()) {
      return Step.to(state.with(new Overlay.Told("This does not go together", faults)));
    }
    return CarryUpdate.done(state.with(Overlay.NONE), work, what, after);
  }
}
