package kitstow.tui.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import kitstow.planner.model.Catalogue;
import kitstow.planner.model.MassSource;
import kitstow.planner.model.Ute;

/** A new scenario: which ute, tray and canopy, where they stand, who drives. */
public final class Founding implements Editor {
  private static final Field.Range DISTANCE = new Field.Range(0L, 20_000_000L);
  private static final long MOST_PERSON_G = 400_000L;

  private final Catalogue catalogue;
  private final Field name = Field.text("Name");
  private final Field ute;
  private final Body body;
  private final Field driver = Field.mass("Driver", MOST_PERSON_G);
  private final Field distance =
      Field.figure("Distance", Measures::distanceM, DISTANCE, "e.g. 320, 320 km, 200 mi");

  /** A form for a new scenario from the entries of a catalogue. */
  public Founding(Catalogue catalogue) {
    this.catalogue = catalogue;
    this.body = new Body(catalogue);
    this.ute = Field.words("Ute", catalogue.utes().stream().map(Ute::title).toList());
  }

  @Override
  public String title() {
    return "A new scenario, from the catalogue";
  }

  @Override
  public String deed() {
    return "begin a scenario";
  }

  @Override
  public List<Field> fields() {
    List<Field> fields = new ArrayList<>(List.of(name, ute));
    fields.addAll(body.fields());
    fields.addAll(List.of(driver, distance));
    return fields;
  }

  @Override
  public List<String> texts() {
    List<String> texts = new ArrayList<>(List.of("", ute.words().get(0)));
    texts.addAll(body.texts());
    texts.addAll(List.of("", "300 km"));
    return texts;
  }

  @Override
  public Optional<String> fault(Form form, Field field) {
    return field == name && fileName(form).isEmpty()
        ? Optional.of("with a letter or a digit in it")
        : body.fault(form, field);
  }

  @Override
  public Optional<String> note(Form form, Field field) {
    return body.note(form, field, vehicle(form));
  }

  private Ute vehicle(Form form) {
    return catalogue.utes().get(form.word(ute));
  }

  /** The name as a file and an id may have it: small letters, digits and hyphens; "" for none. */
  public String fileName(Form form) {
    return form.text(name)
        .strip()
        .toLowerCase(Locale.ROOT)
        .replaceAll("[^a-z0-9]+", "-")
        .replaceAll("^-|-$", "");
  }

  /** What a sound form makes: everything where it stands, no modules, no gear. */
  public Design made(Form form) {
    Ute vehicle = vehicle(form);
    NewScenario start =
        new NewScenario(
            fileName(form),
            form.text(name).strip(),
            vehicle,
            body.trayOn(vehicle, form),
            body.canopyOn(form));
    return start.made(
        Words.mass(form.value(driver), MassSource.ESTIMATE, Optional.empty()),
        form.value(distance) / 1000.0);
  }

  @Override
  public Design after(Design before, Form form) {
    return made(form);
  }
}
