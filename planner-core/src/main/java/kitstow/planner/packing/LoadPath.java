package kitstow.planner.packing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToLongFunction;
import kitstow.planner.model.PlacedItem;

/**
 * Load path in one space: every item passes its own mass and what it carries to what is below it,
 * in proportion to contact area. A stiff-body idealisation (common practice, no source).
 */
public final class LoadPath {
  private final List<Contacts> topDown;

  private LoadPath(List<Contacts> topDown) {
    this.topDown = topDown;
  }

  /** Load path through the contacts of one space. */
  public static LoadPath of(List<Contacts> contacts) {
    List<Contacts> sorted = new ArrayList<>(contacts);
    sorted.sort(Comparator.comparingInt((Contacts c) -> c.item().box().minZMm()).reversed());
    return new LoadPath(sorted);
  }

  /**
   * What rests on each item, in grams by body key.
   *
   * @param massG mass of an item now
   */
  public Map<String, Double> carriedG(ToLongFunction<PlacedItem> massG) {
    Map<String, Double> carried = new LinkedHashMap<>();
    for (Contacts contacts : topDown) {
      carried.putIfAbsent(contacts.item().key(), 0.0);
    }
    for (Contacts contacts : topDown) {
      double passedOn =
          massG.applyAsLong(contacts.item()) + carried.getOrDefault(contacts.item().key(), 0.0);
      for (Contacts.Contact contact : contacts.items()) {
        carried.merge(
            contact.below().key(), passedOn * contact.areaMm2() / contacts.totalMm2(), Double::sum);
      }
    }
    return carried;
  }
}
