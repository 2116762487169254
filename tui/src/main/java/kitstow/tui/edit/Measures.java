package kitstow.tui.edit;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Figures as people write them: 12.5, "12,5 kg", 800 g, 40 lb; 900, 90 cm, 1 m, 24"; 60 L; 320 km,
 * 200 mi; 1.5 days, 36 h. What is no such figure is not read.
 */
public final class Measures {
  private static final Pattern NUMBER =
      Pattern.compile("\\s*(\\d{1,6}(?:[.,]\\d{1,4})?)\\s*([a-z\"'%]*)\\s*");

  /** Grams in a unit; the pound is 0.45359237 kg by definition. */
  private static final Map<String, BigDecimal> GRAMS =
      Map.of(
          "", new BigDecimal("1000"),
          "kg", new BigDecimal("1000"),
          "g", BigDecimal.ONE,
          "t", new BigDecimal("1000000"),
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

  private static final Map<String, BigDecimal> MILLILITRES =
      Map.of(
          "", new BigDecimal("1000"),
          "l", new BigDecimal("1000"),
          "litres", new BigDecimal("1000"),
          "ml", BigDecimal.ONE);

  /** Metres in a unit; the mile is 1609.344 m by definition. */
  private static final Map<String, BigDecimal> METRES =
      Map.of(
          "", new BigDecimal("1000"),
          "km", new BigDecimal("1000"),
          "m", BigDecimal.ONE,
          "mi", new BigDecimal("1609.344"),
          "miles", new BigDecimal("1609.344"));

  /** Thousandths of a day in a unit. */
  private static final Map<String, BigDecimal> MILLIDAYS =
      Map.of(
          "", new BigDecimal("1000"),
          "d", new BigDecimal("1000"),
          "day", new BigDecimal("1000"),
          "days", new BigDecimal("1000"),
          "weeks", new BigDecimal("7000"),
          "week", new BigDecimal("7000"),
          "h", new BigDecimal("41.6666666667"),
          "hours", new BigDecimal("41.6666666667"));

  private static final Map<String, BigDecimal> PERMILLE =
      Map.of("", new BigDecimal("1000"), "%", BigDecimal.TEN);

  private Measures() {}

  /** A mass in grams; kilograms where no unit is written. */
  public static OptionalLong massG(String text) {
    return read(text, GRAMS);
  }

  /** A length in millimetres, which are meant where no unit is written. */
  public static OptionalLong lengthMm(String text) {
    return read(text, MILLIMETRES);
  }

  /** A content in millilitres; litres where no unit is written. */
  public static OptionalLong contentMl(String text) {
    return read(text, MILLILITRES);
  }

  /** A distance in metres; kilometres where no unit is written. */
  public static OptionalLong distanceM(String text) {
    return read(text, METRES);
  }

  /** A time in thousandths of a day; days where no unit is written. */
  public static OptionalLong timeMilliDays(String text) {
    return read(text, MILLIDAYS);
  }

  /** A factor in thousandths, as 1.4 or 140 %. */
  public static OptionalLong factorPermille(String text) {
    return read(text, PERMILLE);
  }

  /** A whole number. */
  public static OptionalLong count(String text) {
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

  /** Thousandths as a plain decimal number: 12500 as 12.5. */
  public static String thousandths(long value) {
    return BigDecimal.valueOf(value, 3).stripTrailingZeros().toPlainString();
  }
}
