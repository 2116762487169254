package kitstow.planner.problem;

import java.util.ArrayDeque;
import java.util.Deque;
import org.jspecify.annotations.Nullable;

/**
 * Where a value is in a JSON text: {@code $.gear[3].massKg}. Keys that are no plain word are
 * quoted, shortened and freed of control characters, so that a path is always safe to print.
 */
public final class JsonPath {
  private static final int LONGEST_KEY = 60;

  private final @Nullable JsonPath parent;
  private final String step;

  private JsonPath(@Nullable JsonPath parent, String step) {
    this.parent = parent;
    this.step = step;
  }

  /** The whole text. */
  public static JsonPath root() {
    return new JsonPath(null, "$");
  }

  /** The whole text of one of several files. */
  public static JsonPath rootOf(String fileName) {
    return new JsonPath(null, fileName + " $");
  }

  /** The value under a key of the object at this path. */
  public JsonPath key(String key) {
    return new JsonPath(this, stepTo(key));
  }

  /** A value of the list at this path, counted from zero. */
  public JsonPath index(int index) {
    return new JsonPath(this, "[" + index + "]");
  }

  private static String stepTo(String key) {
    boolean plain = !key.isEmpty() && key.length() <= LONGEST_KEY;
    for (int i = 0; plain && i < key.length(); i++) {
      char c = key.charAt(i);
      plain = c < 128 && (Character.isLetterOrDigit(c) || c == '-' || c == '_');
    }
    return plain ? "." + key : "['" + shown(key) + "']";
  }

  private static String shown(String key) {
    StringBuilder shown = new StringBuilder();
    int length = Math.min(key.length(), LONGEST_KEY);
    for (int i = 0; i < length; i++) {
      char c = key.charAt(i);
      shown.append(Character.isISOControl(c) || c == '\'' ? '?' : c);
    }
    return key.length() > LONGEST_KEY ? shown + "..." : shown.toString();
  }

  @Override
  public String toString() {
    Deque<String> steps = new ArrayDeque<>();
    for (JsonPath at = this; at != null; at = at.parent) {
      steps.addFirst(at.step);
    }
    return String.join("", steps);
  }
}
