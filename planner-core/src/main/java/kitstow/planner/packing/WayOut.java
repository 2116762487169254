package kitstow.planner.packing;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.Boxes;
import kitstow.planner.model.AccessAxis;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Space;

/**
 * What must be moved before an item comes out along the access axis of its space. What slides out
 * is reached from above.
 */
public final class WayOut {
  private WayOut() {}

  /** Items of the same space to move first, nearest reason first. */
  public static List<PlacedItem> toMoveFirst(PlacedItem item, List<PlacedItem> inSpace) {
    Space space = item.space();
    Map<String, PlacedItem> moved = new LinkedHashMap<>();
    boolean fromAbove = space.access() == AccessAxis.ABOVE || !space.movesWith().isEmpty();
    BoxMm path = fromAbove ? item.box() : pathOf(item.box(), space);
    for (PlacedItem other : inSpace) {
      if (other.is(item)) {
        continue;
      }
      boolean inTheWay =
          fromAbove
              ? Boxes.footprintOverlapMm2(item.box(), other.box()) > 0L
                  && other.box().minZMm() >= item.box().maxZMm()
              : Boxes.overlap(path, other.box());
      if (inTheWay) {
        moved.put(other.key(), other);
      }
    }
    addWhatStandsOn(item, inSpace, moved);
    return List.copyOf(moved.values());
  }

  private static void addWhatStandsOn(
      PlacedItem item, List<PlacedItem> inSpace, Map<String, PlacedItem> moved) {
    Deque<PlacedItem> open = new ArrayDeque<>();
    open.add(item);
    Map<String, PlacedItem> seen = new LinkedHashMap<>();
    while (!open.isEmpty()) {
      PlacedItem below = open.remove();
      for (PlacedItem other : inSpace) {
        if (!other.is(item)
            && other.box().minZMm() == below.box().maxZMm()
            && Boxes.footprintOverlapMm2(below.box(), other.box()) > 0L
            && seen.putIfAbsent(other.key(), other) == null) {
          open.add(other);
        }
      }
    }
    moved.putAll(seen);
  }

  private static BoxMm pathOf(BoxMm item, Space space) {
    BoxMm room = space.box();
    return switch (space.access()) {
      case LEFT -> along(item, item.minXMm(), item.maxXMm(), room.minYMm(), item.minYMm());
      case RIGHT -> along(item, item.minXMm(), item.maxXMm(), item.maxYMm(), room.maxYMm());
      case REAR -> along(item, item.maxXMm(), room.maxXMm(), item.minYMm(), item.maxYMm());
      case FRONT -> along(item, room.minXMm(), item.minXMm(), item.minYMm(), item.maxYMm());
      case ABOVE, FACE -> item;
    };
  }

  private static BoxMm along(BoxMm item, int minX, int maxX, int minY, int maxY) {
    return new BoxMm(
        minX, minY, item.minZMm(), Math.max(minX, maxX), Math.max(minY, maxY), item.maxZMm());
  }
}
