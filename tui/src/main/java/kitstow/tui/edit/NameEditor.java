package kitstow.tui.edit;

import java.util.List;
import kitstow.planner.model.Scenario;

/** Name of a scenario and what it is. */
public final class NameEditor implements Editor {
  private final Scenario scenario;
  private final Field name = Field.text("Name");
  private final Field note = Field.free("What it is");

  /** An editor of a scenario's name. */
  public NameEditor(Scenario scenario) {
    this.scenario = scenario;
  }

  @Override
  public String title() {
    return "Name of the scenario";
  }

  @Override
  public String deed() {
    return "name the scenario";
  }

  @Override
  public List<Field> fields() {
    return List.of(name, note);
  }

  @Override
  public List<String> texts() {
    return List.of(scenario.title(), scenario.note());
  }

  @Override
  public Design after(Design before, Form form) {
    return new Design(
        before.scenario().titled(form.text(name).strip(), form.text(note).strip()), before.plan());
  }
}
