package kitstow.planner.rules;

import java.util.List;
import kitstow.planner.model.PlacedItem;

/** Two items as subjects, in the order of their keys. */
final class Pairs {
  private Pairs() {}

  static List<String> sorted(PlacedItem a, PlacedItem b) {
    return a.key().compareTo(b.key()) <= 0 ? List.of(a.key(), b.key()) : List.of(b.key(), a.key());
  }
}
