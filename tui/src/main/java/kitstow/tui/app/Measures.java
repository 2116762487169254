package kitstow.tui.app;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Masses and lengths as people write them: 12.5, "12,5 kg", 800 g, 40 lb; 900, 90 cm, 1 m, 24". */
final class Measures {
  private static final Pattern NUMBER =
      Pattern.compile("\\s*(\\d{1,6}(?:[.,]\\d{1,4})?)\\s*([a-z\"']*)\\s*");

  /** Grams in a unit; the pound is 0.45359237 kg by definition. */
  private static final Map<String, BigDecimal> GRAMS =
      Map.of(
          "", new BigDecimal("1000"),
          "kg", new BigDecimal("1000"),
          "g", BigDecimal.ONE,
          "lb", new BigDecimal("453.59237"),
          "lbs", new BigDecimal("453.59237"));

  /** Millimetres in a unit; the inch is 25.4 mm by definition. */
  private static final Map<String, BigDecimal> MILLIMETRES =
      Map.of(
          "", BigDecimal.ONE,
          "mm", BigDecimal.ONE,
          "cm", BigDecimal.TEN,
          "m", new BigDecimal("1000"),
          "in", new BigDecimal("25.4"),
          "\"", new BigDecimal("25.4"),
          "ft", new BigDecimal("304.8"),
          "'", new BigDecimal("304.8"));

  private Measures() {}

  /** A mass in grams; kilograms where no unit is written. */
  static OptionalLong massG(String text) {
    return read(text, GRAMS);
  }

  /** A length in millimetres, which are meant where no unit is written. */
  static OptionalLong lengthMm(String text) {
    return read(text, MILLIMETRES);
  }

  /** A whole number. */
  static OptionalLong count(String text) {
    return text.strip().matches("\\d{1,4}")
        ? OptionalLong.of(Long.parseLong(text.strip()))
        : OptionalLong.empty();
  }

  private static OptionalLong read(String text, Map<String, BigDecimal> units) {
    Matcher found = NUMBER.matcher(text.toLowerCase(Locale.ROOT));
    if (!found.matches()) {
      return OptionalLong.empty();
    }
    BigDecimal unit = units.get(found.group(2));
    return unit == null
        ? OptionalLong.empty()
        : OptionalLong.of(
            new BigDecimal(found.group(1).replace(',', '.'))
                .multiply(unit)
                .setScale(0, RoundingMode.HALF_UP)
                .longValueExact());
  }
}
