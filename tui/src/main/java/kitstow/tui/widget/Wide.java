package kitstow.tui.widget;

import java.lang.Character.UnicodeScript;

/** How many cells a sign takes on a terminal. */
final class Wide {
  private static final int FULL_WIDTH_FIRST = 0xFF01;
  private static final int FULL_WIDTH_LAST = 0xFF60;
  private static final int PICTURES_FIRST = 0x1F300;
  private static final int PICTURES_LAST = 0x1FAFF;

  private Wide() {}

  /** Columns of a text. */
  static int columns(String text) {
    return text.codePoints().map(Wide::columns).sum();
  }

  /** Columns of a sign: two for the scripts of East Asia and pictures, else one. */
  static int columns(int sign) {
    if (sign < 0x1100) {
      return 1;
    }
    UnicodeScript script = UnicodeScript.of(sign);
    boolean wide =
        script == UnicodeScript.HAN
            || script == UnicodeScript.HIRAGANA
            || script == UnicodeScript.KATAKANA
            || script == UnicodeScript.HANGUL
            || (sign >= FULL_WIDTH_FIRST && sign <= FULL_WIDTH_LAST)
            || (sign >= PICTURES_FIRST && sign <= PICTURES_LAST);
    return wide ? 2 : 1;
  }
}
