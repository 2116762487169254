package kitstow.planner.model;

import java.util.ArrayList;
import java.util.List;

/**
 * In which order containers are used. Containers of one group are drawn down together in proportion
 * to what they held when the group was opened. A fuel can is never burnt from: it is decanted whole
 * into the first tank of the order that has room for it.
 *
 * @param kind what is used
 * @param groups tank ids, item ids (all units) or {@code item#unit} keys, in order of use
 * @param decant when fuel cans are emptied into a tank
 */
public record SupplyOrder(SupplyKind kind, List<List<String>> groups, Decant decant) {
  /** Copies its collections. */
  public SupplyOrder {
    List<List<String>> copy = new ArrayList<>();
    for (List<String> group : groups) {
      copy.add(List.copyOf(group));
    }
    groups = List.copyOf(copy);
  }

  /** When a can is emptied into a tank. */
  public enum Decant {
    /** As soon as the tank has room for the whole can. */
    EARLY,
    /** Only when the tanks have run dry. */
    WHEN_EMPTY
  }
}
