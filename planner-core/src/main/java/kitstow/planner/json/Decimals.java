package kitstow.planner.json;

import java.math.BigDecimal;

/** Whole units of a decimal as text with as few decimals as it needs. */
final class Decimals {
  private Decimals() {}

  /** 12500 with three decimals is 12.5. */
  static String text(long units, int decimals) {
    BigDecimal value = BigDecimal.valueOf(units, decimals);
    return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
  }

  /** Grams in kilograms. */
  static String kg(long massG) {
    return text(massG, 3) + " kg";
  }
}
