package kitstow.planner.packing;

import java.util.IdentityHashMap;
import kitstow.planner.model.Item;

/** Which items may never be in one space, each pair worked out once. */
final class Strangers {
  private final IdentityHashMap<Item, IdentityHashMap<Item, Boolean>> known =
      new IdentityHashMap<>();

  /** Whether two items may never be in one space. */
  boolean test(Item one, Item other) {
    if (one.marks().isEmpty() || other.marks().isEmpty()) {
      return false;
    }
    IdentityHashMap<Item, Boolean> row =
        known.computeIfAbsent(one, item -> new IdentityHashMap<>());
    Boolean answer = row.get(other);
    if (answer == null) {
      answer = Company.hardPair(one, other);
      row.put(other, answer);
    }
    return answer;
  }
}
