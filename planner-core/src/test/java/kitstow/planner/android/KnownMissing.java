package kitstow.planner.android;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;

/** The list {@code missing-classes.txt}: what the libraries name and the phone lacks, and why. */
final class KnownMissing {
  private KnownMissing() {}

  /** The reason of each class by its name: the comment above it, from the last empty line on. */
  static Map<String, String> reasons() {
    Map<String, String> reasons = new TreeMap<>();
    StringBuilder reason = new StringBuilder();
    for (String line : text().split("\n", -1)) {
      if (line.isBlank()) {
        reason.setLength(0);
      } else if (line.startsWith("#")) {
        reason.append(line.substring(1));
      } else {
        reasons.put(line, reason.toString().strip());
      }
    }
    return reasons;
  }

  private static String text() {
    try (InputStream in = KnownMissing.class.getResourceAsStream("missing-classes.txt")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }
}
