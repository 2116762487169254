package kitstow.planner.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.Boxes;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Space;
import kitstow.planner.packing.WayOut;
import org.jspecify.annotations.Nullable;

/**
 * The order in which the things of one space go in: what carries others before what it carries,
 * what lies behind before what would bar its way. Among those that may go in next, the deepest and
 * lowest first.
 */
final class LoadingOrder {
  private LoadingOrder() {}

  /**
   * An order of the things in a space.
   *
   * @param items the order
   * @param squeezed keys of those that can only come to their place past others, because each of
   *     several bars another's way
   */
  record Ordered(List<PlacedItem> items, Set<String> squeezed) {}

  static Ordered of(Space space, List<PlacedItem> inSpace) {
    Map<String, Set<String>> carriers = new LinkedHashMap<>();
    Map<String, Set<String>> before = new LinkedHashMap<>();
    for (PlacedItem item : inSpace) {
      Set<String> under = new LinkedHashSet<>();
      for (PlacedItem other : inSpace) {
        if (!other.is(item)
            && other.box().maxZMm() == item.box().minZMm()
            && Boxes.footprintOverlapMm2(other.box(), item.box()) > 0L) {
          under.add(other.key());
        }
      }
      carriers.put(item.key(), under);
      before.put(item.key(), new LinkedHashSet<>(under));
    }
    for (PlacedItem item : inSpace) {
      for (PlacedItem later : WayOut.toMoveFirst(item, inSpace)) {
        before.computeIfAbsent(later.key(), key -> new LinkedHashSet<>()).add(item.key());
      }
    }
    List<PlacedItem> waiting = new ArrayList<>(inSpace);
    waiting.sort(deepestAndLowest(space));
    List<PlacedItem> ordered = new ArrayList<>();
    Set<String> done = new LinkedHashSet<>();
    Set<String> squeezed = new LinkedHashSet<>();
    while (!waiting.isEmpty()) {
      PlacedItem next = first(waiting, before, done);
      if (next == null) {
        next = first(waiting, carriers, done);
        next = next == null ? waiting.get(0) : next;
        squeezed.add(next.key());
      }
      waiting.remove(next);
      ordered.add(next);
      done.add(next.key());
    }
    return new Ordered(ordered, squeezed);
  }

  private static @Nullable PlacedItem first(
      List<PlacedItem> waiting, Map<String, Set<String>> before, Set<String> done) {
    for (PlacedItem item : waiting) {
      if (done.containsAll(before.getOrDefault(item.key(), Set.of()))) {
        return item;
      }
    }
    return null;
  }

  private static Comparator<PlacedItem> deepestAndLowest(Space space) {
    return Comparator.comparingInt((PlacedItem item) -> item.box().minZMm())
        .thenComparingInt(item -> fromTheDoor(item.box(), space))
        .thenComparingInt(item -> item.box().minXMm())
        .thenComparingInt(item -> item.box().minYMm())
        .thenComparing(PlacedItem::key);
  }

  /** Less the deeper a thing lies. */
  private static int fromTheDoor(BoxMm box, Space space) {
    return switch (space.access()) {
      case LEFT -> -box.maxYMm();
      case RIGHT -> box.minYMm();
      case REAR, ABOVE, FACE -> box.minXMm();
      case FRONT -> -box.maxXMm();
    };
  }
}
