package kitstow.tui.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kitstow.planner.model.Canopy;
import kitstow.planner.model.Catalogue;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.Tray;
import kitstow.planner.model.Ute;

/** Tray and canopy and where they stand, as fields of a form. */
final class Body {
  private static final String NONE = "none";
  private static final String MEASURE = "measure it, e.g. 330 mm";
  private static final String FIRST_DECK = "930 mm";
  private static final Field.Range PLACE = new Field.Range(0L, 9_000L);
  private static final Field.Range DECK = new Field.Range(300L, 2_000L);

  /** As the names of trays tell it. */
  private static final Pattern AXLE = Pattern.compile("rear axle (\\d+) mm behind its front edge");

  /** The cab that a ute has and that a tray is made for, as their names tell it. */
  private static final Pattern CAB = Pattern.compile("(single|extended|dual) cab");

  private final List<Tray> trays;
  private final List<Canopy> canopies;
  private final Optional<Tray> oldTray;
  private final Optional<Canopy> oldCanopy;
  private final boolean begun;
  private final Field tray;
  private final Field canopy;
  private final Field axle =
      Field.figureIfAny("Rear axle behind tray front", Measures::lengthMm, PLACE, MEASURE);
  private final Field gap =
      Field.figureIfAny("Canopy behind tray front", Measures::lengthMm, PLACE, "e.g. 300 mm");
  private final Field deck = Field.length("Deck above ground", DECK);

  /** What a catalogue has, for a scenario that is begun. */
  Body(Catalogue catalogue) {
    this(catalogue, Optional.empty(), Optional.empty(), /* begun= */ true);
  }

  /** What a catalogue has, and what a scenario has now. */
  Body(Catalogue catalogue, Scenario scenario) {
    this(catalogue, scenario.tray(), scenario.canopy(), /* begun= */ false);
  }

  private Body(Catalogue catalogue, Optional<Tray> now, Optional<Canopy> in, boolean begun) {
    this.oldTray = now;
    this.oldCanopy = in;
    this.begun = begun;
    this.trays = with(catalogue.trays(), now, Tray::title);
    this.canopies = with(catalogue.canopies(), in, Canopy::title);
    this.tray = Field.words("Tray", titles(trays, Tray::title));
    this.canopy = Field.words("Canopy", titles(canopies, Canopy::title));
  }

  /** What there is now stands in the place of the entry it is of, or before all. */
  private static <T> List<T> with(List<T> entries, Optional<T> now, Function<T, String> title) {
    List<T> all = new ArrayList<>(entries);
    now.ifPresent(
        one -> {
          int at = titles(entries, title).indexOf(title.apply(one));
          if (at < entries.size() && at >= 0) {
            all.set(at, one);
          } else {
            all.add(0, one);
          }
        });
    return all;
  }

  private static <T> List<String> titles(List<T> entries, Function<T, String> title) {
    List<String> titles = new ArrayList<>();
    entries.forEach(entry -> titles.add(title.apply(entry)));
    titles.add(NONE);
    return titles;
  }

  /** The field of the canopy. */
  Field canopy() {
    return canopy;
  }

  List<Field> fields() {
    return List.of(tray, canopy, axle, gap, deck);
  }

  /** What stands in the fields at first: what there is, or the first of the catalogue. */
  List<String> texts() {
    String on = begun ? tray.words().get(0) : oldTray.map(Tray::title).orElse(NONE);
    String in = begun ? canopy.words().get(0) : oldCanopy.map(Canopy::title).orElse(NONE);
    return List.of(on, in, "", "", oldTray.map(one -> one.deckZMm() + " mm").orElse(FIRST_DECK));
  }

  /** What is wrong with a field that is sound by itself. */
  Optional<String> fault(Form form, Field field) {
    Optional<Tray> on = tray(form);
    Optional<Canopy> in = canopy(form);
    if (field == canopy && in.isPresent() && on.isEmpty()) {
      return Optional.of("stands on a tray only");
    }
    int tooLongMm = -rest(on, in);
    if (field == canopy && in.isPresent() && tooLongMm > 0) {
      return Optional.of(tooLongMm + " mm longer than the tray");
    }
    boolean unknown =
        form.text(axle).isBlank() && on.isPresent() && !on.equals(oldTray) && told(on).isEmpty();
    return field == axle && unknown ? Optional.of(MEASURE) : Optional.empty();
  }

  /** What is worth knowing of a field, for a ute. */
  Optional<String> note(Form form, Field field, Ute ute) {
    Optional<Tray> on = tray(form);
    if (field == tray) {
      return otherCab(on, ute);
    }
    if (field == axle && form.text(axle).isBlank() && on.isPresent()) {
      return on.equals(oldTray)
          ? Optional.of(ute.wheelbaseMm() - on.get().frontXMm() + " mm, as it is")
          : Optional.of(told(on).orElse(0) + " mm, as its name says; measure yours");
    }
    if (field == gap && form.text(gap).isBlank() && canopy(form).isPresent()) {
      return Optional.of(
          gapMm(form) + (asItIs(form) ? " mm, as it is" : " mm, flush with the tray's rear"));
    }
    return field == deck && begun ? Optional.of("invented; measure yours") : Optional.empty();
  }

  private static Optional<String> otherCab(Optional<Tray> on, Ute ute) {
    Matcher made = CAB.matcher(on.map(Tray::title).orElse(""));
    Matcher has = CAB.matcher(ute.title());
    return made.find() && has.find() && !made.group().equals(has.group())
        ? Optional.of("this ute has a" + (has.group(1).startsWith("e") ? "n " : " ") + has.group())
        : Optional.empty();
  }

  private Optional<Tray> tray(Form form) {
    int at = tray.words().indexOf(form.text(tray));
    return at < trays.size() ? Optional.of(trays.get(at)) : Optional.empty();
  }

  private Optional<Canopy> canopy(Form form) {
    int at = canopy.words().indexOf(form.text(canopy));
    return at < canopies.size() ? Optional.of(canopies.get(at)) : Optional.empty();
  }

  private static int rest(Optional<Tray> on, Optional<Canopy> in) {
    return on.map(one -> one.size().lengthMm()).orElse(0)
        - in.map(one -> one.size().lengthMm()).orElse(0);
  }

  private static OptionalInt told(Optional<Tray> on) {
    Matcher found = AXLE.matcher(on.map(Tray::title).orElse(""));
    return found.find() ? OptionalInt.of(Integer.parseInt(found.group(1))) : OptionalInt.empty();
  }

  private boolean asItIs(Form form) {
    return !begun && tray(form).equals(oldTray) && canopy(form).equals(oldCanopy);
  }

  private int gapMm(Form form) {
    if (!form.text(gap).isBlank()) {
      return Math.toIntExact(form.value(gap));
    }
    return asItIs(form)
        ? oldCanopy.map(Canopy::fromTrayFrontMm).orElse(0)
        : rest(tray(form), canopy(form));
  }

  /** The tray of a sound form in its place on a ute. */
  Optional<Tray> trayOn(Ute ute, Form form) {
    Optional<Tray> on = tray(form);
    boolean stays = form.text(axle).isBlank() && on.equals(oldTray);
    long axleMm = form.text(axle).isBlank() ? told(on).orElse(0) : form.value(axle);
    int frontXMm =
        stays ? oldTray.map(Tray::frontXMm).orElse(0) : ute.wheelbaseMm() - Math.toIntExact(axleMm);
    return on.map(one -> NewScenario.at(one, frontXMm, Math.toIntExact(form.value(deck))));
  }

  /** The canopy of a sound form in its place on the tray. */
  Optional<Canopy> canopyOn(Form form) {
    return canopy(form).map(one -> NewScenario.at(one, gapMm(form)));
  }
}
