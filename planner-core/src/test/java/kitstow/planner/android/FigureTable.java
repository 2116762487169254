package kitstow.planner.android;

import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** Figures of a check, by what they are of. */
final class FigureTable {
  private final Map<String, String> figures = new TreeMap<>();

  void add(String name, String format, Object... values) {
    figures.put(name, String.format(Locale.ROOT, format, values));
  }

  String text() {
    StringBuilder text = new StringBuilder();
    figures.forEach(
        (name, figure) -> text.append(String.format(Locale.ROOT, "%-44s %s%n", name, figure)));
    return text.toString();
  }
}
