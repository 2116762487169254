package kitstow.planner.json;

import java.math.BigDecimal;

/**
 * What numbers under a key may be: unit, decimals kept and range.
 *
 * @param unit as in the key; empty for plain numbers
 * @param decimals how many decimals are kept; values are handed on as whole units of the last one
 * @param min least value
 * @param aboveMin whether the value must be above the least one
 * @param max largest value
 * @param hint what to write
 */
record Measure(
    String unit, int decimals, BigDecimal min, boolean aboveMin, BigDecimal max, String hint) {

  private static final String KILOGRAMS = "give the mass in kilograms, e.g. 12.5";
  private static final String LENGTH = "give the length in whole millimetres, e.g. 450";

  /** Mass of something that is there, kg to 1 g. */
  static final Measure MASS = above("kg", 3, "0", "10000", KILOGRAMS);

  /** Mass of something that may be nothing, kg to 1 g. */
  static final Measure MASS_OR_ZERO = of("kg", 3, "0", "10000", KILOGRAMS);

  /** Mass of a person, kg to 1 g. */
  static final Measure PERSON_MASS = above("kg", 3, "0", "400", KILOGRAMS);

  /** A vehicle rating, kg to 1 g. */
  static final Measure VEHICLE_LIMIT = above("kg", 3, "0", "50000", KILOGRAMS);

  /** A rating that may be zero, kg to 1 g. */
  static final Measure RATING = of("kg", 3, "0", "50000", KILOGRAMS);

  /** Outside or inside size, mm. */
  static final Measure SIZE = of("mm", 0, "1", "20000", LENGTH);

  /** A length that may be zero, mm. */
  static final Measure DISTANCE = of("mm", 0, "0", "20000", LENGTH);

  /** A coordinate, mm. */
  static final Measure COORDINATE =
      of("mm", 0, "-20000", "20000", "give the place in whole millimetres, e.g. -450");

  /** A place before the front axle, mm. */
  static final Measure FRONT =
      of("mm", 0, "-5000", "0", "count from the front axle, forward below zero, e.g. -900");

  /** Content of a tank, litres to 1 ml. */
  static final Measure LITRES = of("L", 3, "0", "2000", "give the content in litres, e.g. 60");

  /** What a tank holds, litres to 1 ml. */
  static final Measure CAPACITY =
      above("L", 3, "0", "2000", "give the capacity in litres, e.g. 80");

  /** Density of a liquid, kg/L to 1 g/L. */
  static final Measure DENSITY =
      of("kg/L", 3, "0.1", "3", "give the density in kilograms per litre, e.g. 0.84 for diesel");

  /** A share, to one part in a thousand. */
  static final Measure RATIO = of("", 3, "0", "1", "give a share between 0 and 1, e.g. 0.8");

  /** A factor, to one part in a thousand. */
  static final Measure FACTOR = of("", 3, "0.1", "10", "give a factor, e.g. 1.3");

  /** A distance driven, km. */
  static final Measure KILOMETRES =
      of("km", 3, "0", "20000", "give the distance in kilometres, e.g. 320");

  /** A time taken, days. */
  static final Measure DAYS = of("days", 3, "0", "365", "give the time in days, e.g. 1.5");

  /** Load index of a tyre. */
  static final Measure LOAD_INDEX =
      of("", 0, "100", "130", "give the number before the speed letter on the tyre, e.g. 113");

  /** Tyres on one axle. */
  static final Measure TYRE_COUNT = of("", 0, "2", "4", "give 2 tyres, or 4 for twin tyres");

  /** Units of an item. */
  static final Measure QUANTITY = of("", 0, "1", "200", "give how many there are, e.g. 2");

  /** One unit of an item. */
  static final Measure UNIT = of("", 0, "1", "200", "count units from 1");

  /** What leaving something home costs. */
  static final Measure VALUE =
      of("", 0, "0", "10000", "give a whole number, e.g. 50; the larger, the more it is missed");

  /** An index counted from zero. */
  static final Measure INDEX = of("", 0, "0", "999", "count from 0");

  /** Version of the format. */
  static final Measure VERSION = of("", 0, "0", "1000000", "write 1");

  /** Any whole number. */
  static final Measure ANY_WHOLE =
      of(
          "",
          0,
          "-9223372036854775808",
          "9223372036854775807",
          "give a whole number as the solver wrote it");

  /** A count of steps. */
  static final Measure STEPS =
      of("", 0, "0", "9223372036854775807", "give a whole number as the solver wrote it");

  /** A step of moments, N·m to a tenth. */
  static final Measure MOMENT_STEP =
      above("Nm", 1, "0", "1000000", "give the step in newton metres, e.g. 0.5");

  private static Measure of(String unit, int decimals, String min, String max, String hint) {
    return new Measure(
        unit, decimals, new BigDecimal(min), /* aboveMin= */ false, new BigDecimal(max), hint);
  }

  private static Measure above(String unit, int decimals, String min, String max, String hint) {
    return new Measure(
        unit, decimals, new BigDecimal(min), /* aboveMin= */ true, new BigDecimal(max), hint);
  }

  /** A value to go on with where the input gives none. */
  long usable() {
    return scaled(aboveMin ? max : min.max(BigDecimal.ZERO));
  }

  /** A value within range in units of the last decimal. */
  long scaled(BigDecimal value) {
    return value.movePointRight(decimals).longValueExact();
  }

  boolean tooSmall(BigDecimal value) {
    int compared = value.compareTo(min);
    return compared < 0 || (aboveMin && compared == 0);
  }

  boolean tooLarge(BigDecimal value) {
    return value.compareTo(max) > 0;
  }

  boolean tooFine(BigDecimal value) {
    return value.stripTrailingZeros().scale() > decimals;
  }

  /** A number with the unit. */
  String with(String number) {
    return unit.isEmpty() ? number : number + " " + unit;
  }

  /** The rule that too small a value breaks. */
  String leastRule() {
    boolean zero = min.signum() == 0;
    if (aboveMin) {
      return zero ? "must be above zero" : "must be above " + with(min.toPlainString());
    }
    return zero ? "must be zero or more" : "must be " + with(min.toPlainString()) + " or more";
  }

  /** The rule that too large a value breaks. */
  String mostRule() {
    return "must be " + with(max.toPlainString()) + " or less";
  }

  /** The rule that too fine a value breaks. */
  String fineRule() {
    return decimals == 0
        ? "must be a whole number"
        : "must have " + decimals + (decimals == 1 ? " decimal" : " decimals") + " or fewer";
  }
}
