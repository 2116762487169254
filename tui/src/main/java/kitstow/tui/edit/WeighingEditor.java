package kitstow.tui.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kitstow.planner.model.EmptyAxleLoads;
import kitstow.planner.model.MassSource;
import kitstow.planner.model.Rig;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.Seat;
import kitstow.planner.model.Tank;

/** Axle loads as they were weighed, and what was in and on the ute then. */
public final class WeighingEditor implements Editor {
  private static final long MOST_G = 50_000_000L;
  private static final long MOST_PERSON_G = 400_000L;

  private final Scenario scenario;
  private final EmptyAxleLoads empty;
  private final Field front = Field.mass("Front axle", MOST_G);
  private final Field rear = Field.mass("Rear axle", MOST_G);
  private final Field source = Field.words("Known by", Words.all(Words.SOURCES));
  private final Field basis = Field.text("Ticket or plate");
  private final Field date = Field.text("When");
  private final Map<String, Field> fuel = new LinkedHashMap<>();
  private final Map<String, Field> people = new LinkedHashMap<>();
  private final Map<String, Field> fitted = new LinkedHashMap<>();

  /** An editor of a ute's weighing. */
  public WeighingEditor(Scenario scenario) {
    this.scenario = scenario;
    this.empty = scenario.ute().empty();
    for (Tank tank : scenario.ute().fuelTanks()) {
      fuel.put(
          tank.id(),
          Field.figureIfAny(
              "In " + tank.title(),
              Measures::contentMl,
              new Field.Range(0L, tank.capacityMl()),
              "up to " + Words.litres(tank.capacityMl())));
    }
    for (Seat seat : scenario.ute().seats()) {
      people.put(
          seat.id(),
          Field.figureIfAny(
              "On " + seat.title(),
              Measures::massG,
              new Field.Range(1L, MOST_PERSON_G),
              "a mass, e.g. 80 kg, or nothing where nobody sat"));
    }
    scenario.ute().parts().forEach(part -> fitted.put(part.id(), fitted(part.title())));
    scenario.accessories().forEach(one -> fitted.put(one.id(), fitted(one.title())));
    scenario.tray().ifPresent(tray -> fitted.put(Rig.TRAY, fitted(tray.title())));
    scenario.canopy().ifPresent(canopy -> fitted.put(Rig.CANOPY, fitted(canopy.title())));
  }

  private static Field fitted(String title) {
    return Field.words("On it: " + title, List.of(Words.NO, Words.YES));
  }

  @Override
  public String title() {
    return "Axle loads as weighed, and with what";
  }

  @Override
  public String deed() {
    return "weigh the ute";
  }

  @Override
  public List<Field> fields() {
    List<Field> fields = new ArrayList<>(List.of(front, rear, source, basis, date));
    fields.addAll(fuel.values());
    fields.addAll(people.values());
    fields.addAll(fitted.values());
    return fields;
  }

  @Override
  public List<String> texts() {
    List<String> texts = new ArrayList<>();
    texts.add(Words.kg(empty.front().massG()));
    texts.add(Words.kg(empty.rear().massG()));
    texts.add(Words.of(empty.front().source()));
    texts.add(empty.source());
    texts.add(empty.date());
    fuel.keySet().forEach(id -> texts.add(Words.litres(empty.fuelMl().getOrDefault(id, 0L))));
    people.keySet().forEach(id -> texts.add(onSeat(id)));
    fitted.keySet().forEach(id -> texts.add(Words.yesOrNo(empty.fitted().contains(id))));
    return texts;
  }

  private String onSeat(String id) {
    long massG =
        empty.people().stream()
            .filter(one -> one.seatId().equals(id))
            .mapToLong(EmptyAxleLoads.PersonAboard::massG)
            .sum();
    return massG == 0L ? "" : Words.kg(massG);
  }

  @Override
  public Design after(Design before, Form form) {
    MassSource known = Words.SOURCES.get(form.word(source));
    Map<String, Long> fuelMl = new LinkedHashMap<>();
    fuel.forEach((id, field) -> fuelMl.put(id, form.value(field)));
    List<EmptyAxleLoads.PersonAboard> aboard = new ArrayList<>();
    people.forEach(
        (id, field) -> {
          long massG = form.value(field);
          if (massG > 0L) {
            aboard.add(new EmptyAxleLoads.PersonAboard(id, massG));
          }
        });
    Set<String> on = new LinkedHashSet<>();
    fitted.forEach(
        (id, field) -> {
          if (form.word(field) == 1) {
            on.add(id);
          }
        });
    EmptyAxleLoads weighed =
        new EmptyAxleLoads(
            Words.mass(form.value(front), known, Optional.of(empty.front())),
            Words.mass(form.value(rear), known, Optional.of(empty.rear())),
            fuelMl,
            aboard,
            on,
            form.text(basis).strip(),
            form.text(date).strip());
    return new Design(before.scenario().withUte(scenario.ute().withEmpty(weighed)), before.plan());
  }
}
