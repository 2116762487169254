package kitstow.tui.edit;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import kitstow.planner.model.KnownMass;
import kitstow.planner.model.Mark;
import kitstow.planner.model.MassSource;
import kitstow.planner.model.Need;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.Zone;

/** Words and figures as they stand in fields. */
final class Words {
  static final List<Need> NEEDS = List.of(Need.values());
  static final List<MassSource> SOURCES = List.of(MassSource.values());
  static final List<Mark> MARKS = List.of(Mark.values());
  static final String NO = "no";
  static final String NO_ROOF = "no roof";

  /** Where the figures of an entry come from that somebody has typed. */
  static final String OWN_FIGURES = "own figures";

  static final String YES = "yes";

  private static final long PERMILLE = 1000L;

  private Words() {}

  static String of(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  static List<String> all(List<? extends Enum<?>> constants) {
    List<String> words = new ArrayList<>();
    constants.forEach(constant -> words.add(of(constant)));
    return words;
  }

  /** The roofs of a scenario on which somebody may sleep or something may be. */
  static List<Zone> roofs(Scenario scenario) {
    return scenario.canopy().isPresent()
        ? List.of(Zone.CAB_ROOF, Zone.CANOPY_ROOF)
        : List.of(Zone.CAB_ROOF);
  }

  /** What a field says in which a roof is chosen, or none. */
  static List<String> roofOrNone(List<Zone> roofs) {
    List<String> words = new ArrayList<>(List.of(NO_ROOF));
    words.addAll(all(roofs));
    return words;
  }

  /** The roof that is chosen in such a field. */
  static Optional<Zone> roof(List<Zone> roofs, int word) {
    return word == 0 ? Optional.empty() : Optional.of(roofs.get(word - 1));
  }

  /** The constants whose places among all are the bits of a value. */
  static <E extends Enum<E>> Set<E> chosen(List<E> constants, long bits) {
    Set<E> chosen = new LinkedHashSet<>();
    for (int i = 0; i < constants.size(); i++) {
      if ((bits >> i & 1L) != 0L) {
        chosen.add(constants.get(i));
      }
    }
    return chosen;
  }

  static String kg(long massG) {
    return Measures.thousandths(massG) + " kg";
  }

  static String mm(long lengthMm) {
    return lengthMm + " mm";
  }

  static String litres(long contentMl) {
    return Measures.thousandths(contentMl) + " L";
  }

  static String yesOrNo(boolean yes) {
    return yes ? YES : NO;
  }

  /** Nothing chosen at first, where there is no word for it. */
  static String wordOr(Optional<String> word, String none) {
    return word.orElse(none);
  }

  /**
   * A mass as it was typed. One that was not changed keeps its tolerance; another takes that of its
   * source: 1, 3, 5 and 20 %, as files are read (our judgement).
   */
  static KnownMass mass(long massG, MassSource source, Optional<KnownMass> before) {
    Optional<KnownMass> same = before.filter(old -> old.massG() == massG && old.source() == source);
    return same.orElseGet(() -> new KnownMass(massG, source, massG * permille(source) / PERMILLE));
  }

  private static int permille(MassSource source) {
    return switch (source) {
      case WEIGHED -> 10;
      case PLATE -> 30;
      case LABEL -> 50;
      case ESTIMATE -> 200;
    };
  }
}
