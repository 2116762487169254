package kitstow.tui.view;

import java.text.Normalizer;
import java.util.Map;

/** Makes text safe to show: no control characters, and plain ASCII where that is asked for. */
public final class Plain {
  private static final Map<Integer, String> IN_ASCII =
      Map.of(
          (int) '·', ".",
          (int) '±', "+-",
          (int) '–', "-",
          (int) '…', "~",
          (int) '×', "x",
          (int) '’', "'",
          (int) '“', "\"",
          (int) '”', "\"",
          (int) '≥', ">=",
          (int) '≤', "<=");

  private Plain() {}

  /**
   * The text with every character that could drive a terminal, or turn the writing direction,
   * replaced by a question mark; tabs and line ends become blanks.
   */
  public static String safe(String text) {
    StringBuilder safe = new StringBuilder(text.length());
    text.codePoints()
        .forEach(
            c -> {
              if (c == '\t' || c == '\n' || c == '\r') {
                safe.append(' ');
              } else if (drivesTheScreen(c)) {
                safe.append('?');
              } else {
                safe.appendCodePoint(c);
              }
            });
    return safe.toString();
  }

  private static boolean drivesTheScreen(int c) {
    return switch (Character.getType(c)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR,
          Character.SURROGATE,
          Character.PRIVATE_USE,
          Character.UNASSIGNED ->
          true;
      default -> false;
    };
  }

  /** The text in ASCII only; letters lose their accents, the rest becomes a question mark. */
  public static String ascii(String text) {
    StringBuilder replaced = new StringBuilder(text.length());
    text.codePoints()
        .forEach(
            c -> {
              String other = IN_ASCII.get(c);
              if (other == null) {
                replaced.appendCodePoint(c);
              } else {
                replaced.append(other);
              }
            });
    StringBuilder ascii = new StringBuilder(replaced.length());
    Normalizer.normalize(replaced, Normalizer.Form.NFD)
        .codePoints()
        .filter(c -> Character.getType(c) != Character.NON_SPACING_MARK)
        .forEach(c -> ascii.append(c < 128 ? (char) c : '?'));
    return ascii.toString();
  }
}
