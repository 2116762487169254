package kitstow.planner.json;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** Finds the name that was probably meant. */
final class Similar {
  /** No name of ours is longer; nothing is similar to such a text. */
  private static final int LONGEST = 130;

  private Similar() {}

  /** The known name nearest to a given one, if one is near enough. */
  static Optional<String> to(String given, Collection<String> known) {
    if (given.length() > LONGEST) {
      return Optional.empty();
    }
    String lower = given.toLowerCase(Locale.ROOT);
    Optional<String> best = Optional.empty();
    int least = Math.max(1, given.length() / 3) + 1;
    for (String name : known) {
      int distance = distance(lower, name.toLowerCase(Locale.ROOT));
      if (distance < least) {
        least = distance;
        best = Optional.of(name);
      }
    }
    return best;
  }

  /** How many letters must be put in, taken out, changed or swapped; a left-out ending is one. */
  private static int distance(String given, String name) {
    if (given.length() > 2 && name.startsWith(given)) {
      return Math.min(1, name.length() - given.length());
    }
    if (name.length() > LONGEST || given.length() > 2 * name.length() + 2) {
      return given.length();
    }
    int[] beforeThat = new int[name.length() + 1];
    int[] previous = new int[name.length() + 1];
    for (int j = 0; j <= name.length(); j++) {
      previous[j] = j;
    }
    for (int i = 1; i <= given.length(); i++) {
      int[] current = new int[name.length() + 1];
      current[0] = i;
      for (int j = 1; j <= name.length(); j++) {
        int change = given.charAt(i - 1) == name.charAt(j - 1) ? 0 : 1;
        current[j] = Math.min(Math.min(current[j - 1], previous[j]) + 1, previous[j - 1] + change);
        if (i > 1 && j > 1 && swapped(given, i, name, j)) {
          current[j] = Math.min(current[j], beforeThat[j - 2] + 1);
        }
      }
      beforeThat = previous;
      previous = current;
    }
    return previous[name.length()];
  }

  private static boolean swapped(String given, int i, String name, int j) {
    return given.charAt(i - 1) == name.charAt(j - 2) && given.charAt(i - 2) == name.charAt(j - 1);
  }
}
