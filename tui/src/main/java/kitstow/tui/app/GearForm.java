package kitstow.tui.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.Content;
import kitstow.planner.model.Item;
import kitstow.planner.model.MassSource;
import kitstow.planner.model.Need;

/**
 * A piece of gear being edited: what stands in each field, looked at while it is typed.
 *
 * @param item the piece as it was
 * @param texts what stands in the fields
 * @param at the field one is in
 */
public record GearForm(Item item, List<String> texts, int at) {
  /** What can be edited. */
  public enum Field {
    /** Name. */
    NAME("Name"),
    /** Mass of one. */
    MASS("Mass"),
    /** How the mass is known. */
    SOURCE("Known by"),
    /** Length. */
    LENGTH("Length"),
    /** Width. */
    WIDTH("Width"),
    /** Height. */
    HEIGHT("Height"),
    /** How many. */
    QUANTITY("How many"),
    /** How much it is wanted along. */
    NEED("Need");

    private final String title;

    Field(String title) {
      this.title = title;
    }

    /** Name of the field. */
    public String title() {
      return title;
    }
  }

  /** Fields in their order. */
  public static final List<Field> FIELDS = List.of(Field.values());

  private static final long MOST_G = 2_000_000L;
  private static final long MOST_MM = 10_000L;
  private static final long MOST_UNITS = 200L;

  /** Copies its collections. */
  public GearForm {
    texts = List.copyOf(texts);
  }

  /** The form of a piece as it is. */
  public static GearForm of(Item item) {
    SizeMm size = item.shapes().get(0);
    long massG = item.mass().massG();
    String kg =
        massG % 1000L == 0L
            ? String.valueOf(massG / 1000L)
            : String.format(Locale.ROOT, "%.3f", massG / 1000.0).replaceAll("0+$", "");
    return new GearForm(
        item,
        List.of(
            item.title(),
            kg + " kg",
            word(item.mass().source()),
            size.lengthMm() + " mm",
            size.widthMm() + " mm",
            size.heightMm() + " mm",
            String.valueOf(item.quantity()),
            word(item.need())),
        0);
  }

  private static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT);
  }

  /** Another field. */
  public GearForm in(int field) {
    return new GearForm(item, texts, Math.floorMod(field, FIELDS.size()));
  }

  /** Other text in the field one is in. */
  public GearForm with(String text) {
    List<String> other = new ArrayList<>(texts);
    other.set(at, text);
    return new GearForm(item, other, at);
  }

  /** The next word in a field of words. */
  public GearForm turned(int by) {
    List<String> words = words(FIELDS.get(at));
    return words.isEmpty()
        ? this
        : with(words.get(Math.floorMod(words.indexOf(texts.get(at)) + by, words.size())));
  }

  /** The words a field may hold; none where anything may be typed. */
  public static List<String> words(Field field) {
    List<String> words = new ArrayList<>();
    if (field == Field.NEED) {
      for (Need need : Need.values()) {
        words.add(word(need));
      }
    } else if (field == Field.SOURCE) {
      for (MassSource source : MassSource.values()) {
        words.add(word(source));
      }
    }
    return words;
  }

  /** What is wrong with a field. */
  public Optional<String> fault(Field field) {
    return switch (field) {
      case NAME -> text(field).isBlank() ? Optional.of("give it a name") : Optional.empty();
      case MASS -> massFault();
      case LENGTH, WIDTH, HEIGHT ->
          range(Measures.lengthMm(text(field)), 1L, MOST_MM, "e.g. 900, 90 cm, 1 m, 24\"");
      case QUANTITY -> range(Measures.count(text(field)), 1L, MOST_UNITS, "1 to 200");
      case SOURCE, NEED ->
          words(field).contains(text(field))
              ? Optional.empty()
              : Optional.of("one of " + String.join(", ", words(field)));
    };
  }

  private Optional<String> massFault() {
    OptionalLong massG = Measures.massG(text(Field.MASS));
    long contentG = item.content().map(Content::contentG).orElse(0L);
    if (massG.isPresent() && massG.getAsLong() < contentG) {
      return Optional.of("its content alone is " + contentG / 1000.0 + " kg");
    }
    return range(massG, 1L, MOST_G, "e.g. 12.5, 12,5 kg, 800 g, 40 lb");
  }

  private static Optional<String> range(OptionalLong value, long least, long most, String hint) {
    return value.isPresent() && value.getAsLong() >= least && value.getAsLong() <= most
        ? Optional.empty()
        : Optional.of(hint);
  }

  /** Whether every field can be used. */
  public boolean sound() {
    return FIELDS.stream().allMatch(field -> fault(field).isEmpty());
  }

  /** What stands in a field. */
  public String text(Field field) {
    return texts.get(FIELDS.indexOf(field));
  }
}
