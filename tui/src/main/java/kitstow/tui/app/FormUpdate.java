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
    return switch (key.key()) {
      case ESCAPE -> Step.to(state.with(Overlay.NONE).saying("Not changed."));
      case ENTER ->
          form.sound() && state.work().isPresent()
              ? done(
                  state,
                  form.editor().deed(),
                  form.editor().after(state.work().get().design(), form))
              : refused(state);
      default -> shown(state, filled(form, key));
    };
  }

  /** A form after a key that fills it in or goes on to another field. */
  static Form filled(Form form, KeyPress key) {
    boolean words = !form.field().words().isEmpty();
    return switch (key.key()) {
      case TAB, DOWN -> form.in(form.at() + 1);
      case BACK_TAB, UP -> form.in(form.at() - 1);
      case LEFT -> form.turned(-1);
      case RIGHT -> form.turned(1);
      case BACKSPACE -> words ? form : form.with(shorter(form.text()));
      case DELETE -> words ? form : form.with("");
      case SIGN -> {
        String sign = Character.toString(key.sign());
        yield words ? form.turnedTo(sign) : form.typed(sign);
      }
      default -> form;
    };
  }

  static Step refused(AppState state) {
    return Step.to(state.saying("Put right what is marked first, or Esc to leave it."));
  }

  static String shorter(String text) {
    return text.isEmpty() ? text : text.substring(0, text.offsetByCodePoints(text.length(), -1));
  }

  /** Does it, unless it makes a scenario that could not be read again. */
  static Step done(AppState state, String what, Design after) {
    Work work = state.work().orElseThrow();
    if (after.equals(work.design())) {
      return Step.to(state.with(Overlay.NONE).saying("Nothing has changed."));
    }
    List<String> faults = Tidy.faults(after.scenario());
    if (!faults.isEmpty()) {
      return notTogether(state, faults);
    }
    return CarryUpdate.done(state.with(Overlay.NONE), work, what, after);
  }

  /** Tells why a scenario could not be read again. */
  static Step notTogether(AppState state, List<String> faults) {
    return Step.to(state.with(new Overlay.Told("This does not go together", faults)));
  }
}
