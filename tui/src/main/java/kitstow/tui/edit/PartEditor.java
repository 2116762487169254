package kitstow.tui.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitstow.planner.model.PartState;
import kitstow.planner.model.RemovablePart;
import kitstow.planner.model.Scenario;

/** A part of the ute that can come off: on or off. */
public final class PartEditor implements Editor {
  private static final List<PartState> STATES = List.of(PartState.ON, PartState.OFF);

  private final RemovablePart part;
  private final Field state;

  /** An editor of a part; one that is stowed may stay so. */
  public PartEditor(RemovablePart part) {
    this.part = part;
    List<PartState> words = new ArrayList<>(STATES);
    if (part.state() == PartState.STOWED) {
      words.add(PartState.STOWED);
    }
    this.state = Field.words("It is", Words.all(words));
  }

  @Override
  public String title() {
    return part.title();
  }

  @Override
  public String deed() {
    return "change " + part.title();
  }

  @Override
  public List<Field> fields() {
    return List.of(state);
  }

  @Override
  public List<String> texts() {
    return List.of(Words.of(part.state()));
  }

  @Override
  public Design after(Design before, Form form) {
    int word = form.word(state);
    Scenario scenario = before.scenario();
    List<RemovablePart> parts = new ArrayList<>();
    for (RemovablePart one : scenario.ute().parts()) {
      boolean changed = one.id().equals(part.id()) && word < STATES.size();
      parts.add(changed ? with(one, STATES.get(word)) : one);
    }
    return new Design(scenario.withUte(scenario.ute().withParts(parts)), before.plan());
  }

  static RemovablePart with(RemovablePart part, PartState state) {
    return new RemovablePart(
        part.id(), part.title(), part.mass(), part.box(), state, Optional.empty());
  }
}
