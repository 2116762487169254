package kitstow.planner.json;

import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/** A JSON text while it is written: keys in a fixed order, numbers without noise. */
final class JsonOut {
  /** Decimals to which the noise of binary fractions is taken off before a number is rounded. */
  private static final int CLEAN_DECIMALS = 7;

  private final StringWriter text = new StringWriter();
  private final JsonWriter writer = new JsonWriter(text);

  JsonOut() {
    writer.setIndent("  ");
  }

  /** The whole text as one object. */
  static String document(Writing content) {
    JsonOut out = new JsonOut();
    out.entry(() -> content.to(out));
    return out.text + "\n";
  }

  /** Writes the fields of an object. */
  interface Writing {
    void to(JsonOut out);
  }

  /** One step of the underlying writer; on a text in memory it cannot fail. */
  private interface Step {
    void run() throws IOException;
  }

  private static void run(Step step) {
    try {
      step.run();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** An object in a list. */
  void entry(Runnable fields) {
    run(writer::beginObject);
    fields.run();
    run(writer::endObject);
  }

  void object(String key, Runnable fields) {
    name(key);
    entry(fields);
  }

  void list(String key, Runnable entries) {
    name(key);
    run(writer::beginArray);
    entries.run();
    run(writer::endArray);
  }

  /** A list of texts. */
  void texts(String key, Iterable<String> values) {
    list(key, () -> values.forEach(value -> run(() -> writer.value(value))));
  }

  void text(String key, String value) {
    name(key);
    run(() -> writer.value(value));
  }

  void word(String key, Enum<?> value) {
    text(key, Words.of(value));
  }

  void textOrNull(String key, Optional<String> value) {
    if (value.isPresent()) {
      text(key, value.get());
    } else {
      nothing(key);
    }
  }

  void whole(String key, long value) {
    name(key);
    run(() -> writer.value(value));
  }

  /** The unit of an item of which there are several; null for 0. */
  void unit(int value) {
    if (value > 0) {
      whole("unit", value);
    } else {
      nothing("unit");
    }
  }

  void flag(String key, boolean value) {
    name(key);
    run(() -> writer.value(value));
  }

  void nothing(String key) {
    name(key);
    run(writer::nullValue);
  }

  /** Grams as kilograms, exact. */
  void kg(String key, long massG) {
    name(key);
    run(() -> writer.value(new BigDecimal(Decimals.text(massG, 3))));
  }

  /** A number to the nearest. */
  void near(String key, double value, int decimals) {
    number(key, value, decimals, RoundingMode.HALF_UP);
  }

  /** A load, tolerance or limit reached: never told smaller than it is. */
  void up(String key, double value, int decimals) {
    number(key, value, decimals, RoundingMode.CEILING);
  }

  /** A margin: never told larger than it is. */
  void down(String key, double value, int decimals) {
    number(key, value, decimals, RoundingMode.FLOOR);
  }

  private void number(String key, double value, int decimals, RoundingMode mode) {
    BigDecimal clean = BigDecimal.valueOf(value).setScale(CLEAN_DECIMALS, RoundingMode.HALF_UP);
    BigDecimal rounded = clean.setScale(decimals, mode);
    BigDecimal plain =
        rounded.signum() == 0
            ? BigDecimal.ZERO
            : new BigDecimal(rounded.stripTrailingZeros().toPlainString());
    name(key);
    run(() -> writer.value(plain));
  }

  private void name(String key) {
    run(() -> writer.name(key));
  }
}
