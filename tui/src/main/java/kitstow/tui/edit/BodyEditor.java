package kitstow.tui.edit;

import java.util.List;
import java.util.Optional;
import kitstow.planner.model.Catalogue;
import kitstow.planner.model.Ute;

/** Another tray or canopy on the same ute, or the same ones elsewhere. */
public final class BodyEditor implements Editor {
  private final Design before;
  private final Body body;

  /** An editor of tray and canopy of a design. */
  public BodyEditor(Design design, Catalogue catalogue) {
    this.before = design;
    this.body = new Body(catalogue, design.scenario());
  }

  @Override
  public String title() {
    return "Tray and canopy";
  }

  @Override
  public String deed() {
    return "change tray or canopy";
  }

  @Override
  public List<Field> fields() {
    return body.fields();
  }

  @Override
  public List<String> texts() {
    return body.texts();
  }

  @Override
  public Optional<String> fault(Form form, Field field) {
    return body.fault(form, field);
  }

  /** Beside what is known of the body itself: what a change takes out. */
  @Override
  public Optional<String> note(Form form, Field field) {
    return field == body.canopy() && form.sound()
        ? losses(after(before, form))
        : body.note(form, field, before.scenario().ute());
  }

  private Optional<String> losses(Design after) {
    int modules = before.scenario().modules().size() - after.scenario().modules().size();
    int home = before.plan().placements().size() - after.plan().placements().size();
    if (modules == 0 && home == 0) {
      return Optional.empty();
    }
    return Optional.of(
        (modules == 0 ? "" : modules + (modules == 1 ? " module goes, " : " modules go, "))
            + home
            + " more at home");
  }

  @Override
  public Design after(Design design, Form form) {
    Ute ute = design.scenario().ute();
    return Refit.on(design, body.trayOn(ute, form), body.canopyOn(form));
  }
}
