package kitstow.planner.json;

import java.util.Collection;

/** How values of the input are shown in messages: short, and without control characters. */
final class Shown {
  private static final int LONGEST = 60;
  private static final int LONGEST_NUMBER = 24;
  private static final int MOST_NAMES = 30;

  private Shown() {}

  /** A text in double quotes. */
  static String quoted(String text) {
    StringBuilder shown = new StringBuilder("\"");
    int length = Math.min(text.length(), LONGEST);
    for (int i = 0; i < length; i++) {
      char c = text.charAt(i);
      shown.append(Character.isISOControl(c) ? '?' : c);
    }
    return shown.append(text.length() > LONGEST ? "...\"" : "\"").toString();
  }

  /** A number as it is written. */
  static String number(String raw) {
    return raw.length() > LONGEST_NUMBER ? raw.substring(0, LONGEST_NUMBER) + "..." : raw;
  }

  /** Names one after the other; of very many only the first. */
  static String list(Collection<String> names) {
    StringBuilder shown = new StringBuilder();
    int count = 0;
    for (String name : names) {
      if (count == MOST_NAMES) {
        return shown + " and " + (names.size() - count) + " more";
      }
      shown.append(count == 0 ? "" : ", ").append(name);
      count++;
    }
    return shown.toString();
  }
}
