package kitstow.planner.json;

import com.google.gson.FormattingStyle;
import com.google.gson.Strictness;
import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.TreeMap;
import java.util.function.Consumer;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.KnownMass;

/**
 * Writes JSON in one form only: keys in the order in which they are written, two spaces a level,
 * line feeds, no decimals that are not needed, and nothing for what is absent.
 */
final class Output {
  /** Decimals to which the noise of binary fractions is taken off before a number is rounded. */
  private static final int CLEAN_DECIMALS = 7;

  private final StringWriter text = new StringWriter();
  private final JsonWriter writer = new JsonWriter(text);

  Output() {
    writer.setStrictness(Strictness.STRICT);
    writer.setFormattingStyle(FormattingStyle.PRETTY.withIndent("  ").withNewline("\n"));
  }

  /** A step of the token writer; writing to a string cannot fail. */
  private interface Step {
    void write() throws IOException;
  }

  private static void step(Step step) {
    try {
      step.write();
    } catch (IOException e) {
      throw new IllegalStateException("writing to a string failed", e);
    }
  }

  /** Writes the whole text: one object, ended by a line feed. */
  static String text(Consumer<Output> fields) {
    Output out = new Output();
    out.braces(fields);
    return out.text.append('\n').toString();
  }

  private void braces(Consumer<Output> fields) {
    step(writer::beginObject);
    fields.accept(this);
    step(writer::endObject);
  }

  private void key(String key) {
    step(() -> writer.name(key));
  }

  void object(String key, Consumer<Output> fields) {
    key(key);
    braces(fields);
  }

  void text(String key, String value) {
    key(key);
    step(() -> writer.value(value));
  }

  void text(String key, Optional<String> value) {
    value.ifPresent(given -> text(key, given));
  }

  void word(String key, Enum<?> value) {
    text(key, Words.of(value));
  }

  void flag(String key, boolean value) {
    key(key);
    step(() -> writer.value(value));
  }

  /** Writes a flag only if it is set. */
  void flagIfSet(String key, boolean value) {
    if (value) {
      flag(key, true);
    }
  }

  /** Writes units of the last decimal. */
  void number(String key, long units, int decimals) {
    key(key);
    step(() -> writer.jsonValue(Decimals.text(units, decimals)));
  }

  void number(String key, OptionalLong units, int decimals) {
    units.ifPresent(given -> number(key, given, decimals));
  }

  /** Writes a whole number. */
  void whole(String key, long value) {
    number(key, value, 0);
  }

  /** Writes thousandths: grams in kilograms, millilitres in litres, per mille in ones. */
  void milli(String key, long units) {
    number(key, units, 3);
  }

  /** Writes that there is nothing. */
  void nothing(String key) {
    key(key);
    step(writer::nullValue);
  }

  /** Writes what somebody typed: as a number if it is one, else as a text. */
  void typed(String key, String value) {
    key(key);
    if (value.matches("-?(0|[1-9][0-9]{0,17})(\\.[0-9]{1,18})?")) {
      step(() -> writer.jsonValue(value));
    } else {
      step(() -> writer.value(value));
    }
  }

  /** Writes a whole number, or that there is none. */
  void wholeOrNull(String key, OptionalLong value) {
    if (value.isPresent()) {
      whole(key, value.getAsLong());
    } else {
      nothing(key);
    }
  }

  /** Writes a text, or that there is none. */
  void textOrNull(String key, Optional<String> value) {
    if (value.isPresent()) {
      text(key, value.get());
    } else {
      nothing(key);
    }
  }

  /** Writes a number to the nearest. */
  void near(String key, double value, int decimals) {
    rounded(key, value, decimals, RoundingMode.HALF_UP);
  }

  /** Writes a load or a tolerance: never told smaller than it is. */
  void up(String key, double value, int decimals) {
    rounded(key, value, decimals, RoundingMode.CEILING);
  }

  /** Writes a margin: never told larger than it is. */
  void down(String key, double value, int decimals) {
    rounded(key, value, decimals, RoundingMode.FLOOR);
  }

  private void rounded(String key, double value, int decimals, RoundingMode mode) {
    BigDecimal clean = BigDecimal.valueOf(value).setScale(CLEAN_DECIMALS, RoundingMode.HALF_UP);
    number(key, clean.setScale(decimals, mode).unscaledValue().longValue(), decimals);
  }

  /** Writes a list of objects; nothing for an empty one. */
  <T> void list(String key, Collection<T> values, Consumer<T> fields) {
    if (!values.isEmpty()) {
      listAlways(key, values, fields);
    }
  }

  /** Writes a list of objects. */
  <T> void listAlways(String key, Collection<T> values, Consumer<T> fields) {
    key(key);
    step(writer::beginArray);
    for (T value : values) {
      braces(out -> fields.accept(value));
    }
    step(writer::endArray);
  }

  /** Writes a list of texts; nothing for an empty one. */
  void texts(String key, Collection<String> values) {
    if (!values.isEmpty()) {
      key(key);
      texts(values);
    }
  }

  /** Writes a list of texts. */
  void textsAlways(String key, Collection<String> values) {
    key(key);
    texts(values);
  }

  private void texts(Collection<String> values) {
    step(writer::beginArray);
    for (String value : values) {
      step(() -> writer.value(value));
    }
    step(writer::endArray);
  }

  /** Writes a list of lists of texts. */
  void groups(String key, List<List<String>> groups) {
    key(key);
    step(writer::beginArray);
    groups.forEach(this::texts);
    step(writer::endArray);
  }

  /** Writes a list of words in the order of their enum; nothing for an empty one. */
  <E extends Enum<E>> void words(String key, Collection<E> values) {
    List<E> sorted = new ArrayList<>(values);
    sorted.sort(null);
    List<String> words = new ArrayList<>();
    for (E value : sorted) {
      words.add(Words.of(value));
    }
    texts(key, words);
  }

  /** Writes an object of thousandths with its keys in order. */
  void millis(String key, Map<String, Long> units) {
    object(key, out -> new TreeMap<>(units).forEach(out::milli));
  }

  /** Writes massKg, massSource and massToleranceKg. */
  void mass(KnownMass mass) {
    milli("massKg", mass.massG());
    word("massSource", mass.source());
    milli("massToleranceKg", mass.toleranceG());
  }

  /** Writes a size along x, y and z. */
  void size(String key, SizeMm size) {
    object(key, out -> out.size(size));
  }

  /** Writes the fields of a size along x, y and z. */
  void size(SizeMm size) {
    whole("length", size.lengthMm());
    whole("width", size.widthMm());
    whole("height", size.heightMm());
  }

  /** Writes a point. */
  void point(String key, int x, int y, int z) {
    object(
        key,
        out -> {
          out.whole("x", x);
          out.whole("y", y);
          out.whole("z", z);
        });
  }
}
