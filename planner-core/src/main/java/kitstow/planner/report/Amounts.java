package kitstow.planner.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import kitstow.planner.model.Body;
import kitstow.planner.model.BodyKind;

/** Loads of bodies in words, heaviest first; units of one thing are told together. */
final class Amounts {
  private static final int MOST = 3;

  private final Map<String, Amount> byId = new LinkedHashMap<>();

  private record Amount(String title, int units, double kg) {
    Amount with(Amount other) {
      return new Amount(title, units + other.units, kg + other.kg);
    }
  }

  /** Adds the load of a body. */
  void add(Body body, double kg) {
    // A module's moving part and a tank's content go with what they belong to.
    int units = body.kind() == BodyKind.ITEM ? 1 : 0;
    byId.merge(body.id(), new Amount(body.title(), units, kg), Amount::with);
  }

  boolean isEmpty() {
    return byId.isEmpty();
  }

  /** The heaviest three. */
  String heaviest() {
    List<Amount> sorted = new ArrayList<>(byId.values());
    sorted.sort(Comparator.comparingDouble(Amount::kg).reversed());
    List<String> words = new ArrayList<>();
    for (Amount one : sorted.subList(0, Math.min(MOST, sorted.size()))) {
      words.add((one.units() > 1 ? one.units() + " x " : "") + one.title() + " " + up(one.kg()));
    }
    return String.join("; ", words);
  }

  /** Kilograms rounded up to one decimal. */
  static String up(double kg) {
    return text(Math.ceil(kg * 10.0 - 1e-6) / 10.0) + " kg";
  }

  /** Kilograms rounded down to one decimal. */
  static String down(double kg) {
    return text(Math.floor(kg * 10.0 + 1e-6) / 10.0) + " kg";
  }

  /** A whole number. */
  static String whole(double value) {
    return String.format(Locale.ROOT, "%,.0f", value);
  }

  /** A figure with one decimal. */
  static String text(double value) {
    return String.format(Locale.ROOT, "%,.1f", value);
  }
}
