package kitstow.tui.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kitstow.planner.model.Canopy;
import kitstow.planner.model.Catalogue;
import kitstow.planner.model.MassSource;
import kitstow.planner.model.Tray;
import kitstow.planner.model.Ute;

/** A new scenario: which ute, tray and canopy, where they stand, who drives. */
public final class Founding implements Editor {
  private static final String NONE = "none";
  private static final Field.Range PLACE = new Field.Range(0L, 9_000L);
  private static final Field.Range DISTANCE = new Field.Range(0L, 20_000_000L);
  private static final Field.Range DECK = new Field.Range(300L, 2_000L);
  private static final long MOST_PERSON_G = 400_000L;

  /** As the names of trays tell it. */
  private static final Pattern AXLE = Pattern.compile("rear axle (\\d+) mm behind its front edge");

  private final Catalogue catalogue;
  private final Field name = Field.text("Name");
  private final Field ute;
  private final Field tray;
  private final Field canopy;
  private final Field axle =
      Field.figureIfAny(
          "Rear axle behind tray front", Measures::lengthMm, PLACE, "measure it, e.g. 330 mm");
  private final Field deck = Field.length("Deck above ground", DECK);
  private final Field gap =
      Field.figureIfAny("Canopy behind tray front", Measures::lengthMm, PLACE, "e.g. 300 mm");
  private final Field driver = Field.mass("Driver", MOST_PERSON_G);
  private final Field distance =
      Field.figure("Distance", Measures::distanceM, DISTANCE, "e.g. 320, 320 km, 200 mi");

  /** A form for a new scenario from the entries of a catalogue. */
  public Founding(Catalogue catalogue) {
    this.catalogue = catalogue;
    this.ute = Field.words("Ute", titles(catalogue.utes(), Ute::title, List.of()));
    this.tray = Field.words("Tray", titles(catalogue.trays(), Tray::title, List.of(NONE)));
    this.canopy = Field.words("Canopy", titles(catalogue.canopies(), Canopy::title, List.of(NONE)));
  }

  private static <T> List<String> titles(
      List<T> entries, Function<T, String> title, List<String> others) {
    List<String> titles = new ArrayList<>();
    entries.forEach(entry -> titles.add(title.apply(entry)));
    titles.addAll(others);
    return titles;
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
    return List.of(name, ute, tray, canopy, axle, gap, deck, driver, distance);
  }

  @Override
  public List<String> texts() {
    return List.of(
        "",
        ute.words().get(0),
        tray.words().get(0),
        canopy.words().get(0),
        "",
        "",
        "930 mm",
        "",
        "300 km");
  }

  @Override
  public Optional<String> fault(Form form, Field field) {
    Optional<Tray> on = tray(form);
    Optional<Canopy> in = canopy(form);
    if (field == name && fileName(form).isEmpty()) {
      return Optional.of("with a letter or a digit in it");
    }
    if (field == canopy && in.isPresent() && on.isEmpty()) {
      return Optional.of("stands on a tray only");
    }
    int tooLongMm = -rest(on, in);
    if (field == canopy && in.isPresent() && tooLongMm > 0) {
      return Optional.of(tooLongMm + " mm longer than the tray");
    }
    if (field == axle && on.isPresent() && form.text(axle).isBlank() && told(on).isEmpty()) {
      return Optional.of("measure it, e.g. 330 mm");
    }
    return Optional.empty();
  }

  @Override
  public Optional<String> note(Form form, Field field) {
    if (field == axle && form.text(axle).isBlank() && told(tray(form)).isPresent()) {
      return Optional.of(told(tray(form)).getAsInt() + " mm, as its name says; measure yours");
    }
    if (field == gap && form.text(gap).isBlank() && canopy(form).isPresent()) {
      return Optional.of(rest(tray(form), canopy(form)) + " mm, flush with the tray's rear");
    }
    if (field == deck) {
      return Optional.of("invented; measure yours");
    }
    return Optional.empty();
  }

  private Optional<Tray> tray(Form form) {
    int at = tray.words().indexOf(form.text(tray));
    return at < catalogue.trays().size()
        ? Optional.of(catalogue.trays().get(at))
        : Optional.empty();
  }

  private Optional<Canopy> canopy(Form form) {
    int at = canopy.words().indexOf(form.text(canopy));
    return at < catalogue.canopies().size()
        ? Optional.of(catalogue.canopies().get(at))
        : Optional.empty();
  }

  private static int rest(Optional<Tray> on, Optional<Canopy> in) {
    return on.map(one -> one.size().lengthMm()).orElse(0)
        - in.map(one -> one.size().lengthMm()).orElse(0);
  }

  private static OptionalInt told(Optional<Tray> on) {
    Matcher found = AXLE.matcher(on.map(Tray::title).orElse(""));
    return found.find() ? OptionalInt.of(Integer.parseInt(found.group(1))) : OptionalInt.empty();
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
    Optional<Tray> on = tray(form);
    long axleMm = form.text(axle).isBlank() ? told(on).orElse(0) : form.value(axle);
    Ute vehicle = catalogue.utes().get(form.word(ute));
    int frontXMm = vehicle.wheelbaseMm() - Math.toIntExact(axleMm);
    int behindMm =
        form.text(gap).isBlank() ? rest(on, canopy(form)) : Math.toIntExact(form.value(gap));
    NewScenario start =
        new NewScenario(
            fileName(form),
            form.text(name).strip(),
            vehicle,
            on.map(one -> NewScenario.at(one, frontXMm, Math.toIntExact(form.value(deck)))),
            canopy(form).map(one -> NewScenario.at(one, behindMm)));
    return start.made(
        Words.mass(form.value(driver), MassSource.ESTIMATE, Optional.empty()),
        form.value(distance) / 1000.0);
  }

  @Override
  public Design after(Design before, Form form) {
    return made(form);
  }
}
