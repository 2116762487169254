package kitstow.tui.view;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;

/** Figures as text. Loads and tolerances are rounded up, margins down, limits not at all. */
public final class Figures {
  /** Takes the noise of binary fractions off before rounding. */
  private static final int CLEAN_DECIMALS = 7;

  private Figures() {}

  /** A load or a tolerance in kilograms with one decimal, rounded up. */
  public static String loadKg(double kg) {
    return text(kg, 1, RoundingMode.CEILING);
  }

  /** A load in whole kilograms, rounded up. */
  public static String wholeLoadKg(double kg) {
    return text(kg, 0, RoundingMode.CEILING);
  }

  /** A margin in kilograms with one decimal, rounded down. */
  public static String marginKg(double kg) {
    return text(kg, 1, RoundingMode.FLOOR);
  }

  /** Any figure to the nearest. */
  public static String near(double value, int decimals) {
    return text(value, decimals, RoundingMode.HALF_UP);
  }

  /** A used share in whole per cent, rounded up; a word where the limit is nothing. */
  public static String usedPercent(double ratio) {
    return Double.isInfinite(ratio) ? "none" : text(ratio * 100.0, 0, RoundingMode.CEILING) + " %";
  }

  private static String text(double value, int decimals, RoundingMode mode) {
    BigDecimal clean = BigDecimal.valueOf(value).setScale(CLEAN_DECIMALS, RoundingMode.HALF_UP);
    return String.format(Locale.ROOT, "%,." + decimals + "f", clean.setScale(decimals, mode));
  }
}
