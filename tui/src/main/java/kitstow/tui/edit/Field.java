package kitstow.tui.edit;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Function;

/** One field of a form: what may stand in it, and the value of what does. */
public final class Field {
  private final String title;
  private final List<String> words;
  private final String hint;
  private final boolean figure;
  private final Function<String, OptionalLong> reading;

  private Field(
      String title,
      List<String> words,
      String hint,
      boolean figure,
      Function<String, OptionalLong> reading) {
    this.title = title;
    this.figure = figure;
    this.words = List.copyOf(words);
    this.hint = hint;
    this.reading = reading;
  }

  /** Any text that says something. */
  public static Field text(String title) {
    return new Field(
        title,
        List.of(),
        "give it a name",
        /* figure= */ false,
        text -> text.isBlank() ? OptionalLong.empty() : OptionalLong.of(0L));
  }

  /** Any text, or nothing. */
  public static Field free(String title) {
    return new Field(title, List.of(), "", /* figure= */ false, text -> OptionalLong.of(0L));
  }

  /** One of some words; its value is the word's place among them. */
  public static Field words(String title, List<String> words) {
    return new Field(
        title,
        words,
        "one of " + String.join(", ", words),
        /* figure= */ false,
        text -> {
          int at = words.indexOf(text);
          return at < 0 ? OptionalLong.empty() : OptionalLong.of(at);
        });
  }

  /**
   * Any number of some words, with commas between; its value has the bits of their places among
   * them.
   */
  public static Field manyWords(String title, List<String> words) {
    return new Field(
        title,
        List.of(),
        "any of " + String.join(", ", words),
        /* figure= */ false,
        text -> {
          long bits = 0L;
          for (String word : text.split("[,;]", -1)) {
            int at = words.indexOf(word.strip().toLowerCase(Locale.ROOT));
            if (at < 0 && !word.isBlank()) {
              return OptionalLong.empty();
            }
            bits |= at < 0 ? 0L : 1L << at;
          }
          return OptionalLong.of(bits);
        });
  }

  /**
   * A figure within a range.
   *
   * @param reading reads it
   * @param hint what to write where it is none, or out of the range
   */
  public static Field figure(
      String title, Function<String, OptionalLong> reading, Range range, String hint) {
    return new Field(
        title,
        List.of(),
        hint,
        /* figure= */ true,
        text -> {
          OptionalLong value = reading.apply(text);
          return value.isPresent() && range.holds(value.getAsLong()) ? value : OptionalLong.empty();
        });
  }

  /** A figure within a range, or nothing, which counts as zero. */
  public static Field figureIfAny(
      String title, Function<String, OptionalLong> reading, Range range, String hint) {
    Field given = figure(title, reading, range, hint);
    return new Field(
        title,
        List.of(),
        hint,
        /* figure= */ true,
        text -> text.isBlank() ? OptionalLong.of(0L) : given.reading.apply(text));
  }

  /** A mass in grams, more than nothing. */
  public static Field mass(String title, long mostG) {
    return figure(title, Measures::massG, new Range(1L, mostG), "e.g. 12.5, 12,5 kg, 800 g, 40 lb");
  }

  /** A length in millimetres. */
  public static Field length(String title, Range range) {
    return figure(title, Measures::lengthMm, range, "e.g. 900, 90 cm, 1 m, 24\"");
  }

  /**
   * What a value may be, in the unit it is read in.
   *
   * @param least the least value
   * @param most the largest value
   */
  public record Range(long least, long most) {
    boolean holds(long value) {
      return value >= least && value <= most;
    }
  }

  /** Name of the field. */
  public String title() {
    return title;
  }

  /** Whether it holds a figure. */
  boolean isFigure() {
    return figure;
  }

  /** The words it may hold; none where anything may be typed. */
  public List<String> words() {
    return words;
  }

  /** What is wrong with a text in it. */
  public Optional<String> fault(String text) {
    return reading.apply(text).isPresent() ? Optional.empty() : Optional.of(hint);
  }

  /** The value of a text without a fault. */
  long value(String text) {
    return reading.apply(text).orElseThrow();
  }
}
