package kitstow.planner.advice;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.Boxes;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.FittedModule;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Space;
import kitstow.planner.packing.Room;
import kitstow.planner.packing.SlideTravel;

/**
 * The largest boxes that are empty between what stands in a space: every maximal one, none inside
 * another. What may carry nothing keeps the room above it; support is not asked for.
 */
final class Gaps {
  private Gaps() {}

  /** Maximal empty boxes of a space, projections beyond roof bars included. */
  static List<BoxMm> of(Loading loading, Space space) {
    BoxMm room = Room.of(space);
    return between(room, taken(loading, space, room));
  }

  /** What takes room in a space. */
  private static List<BoxMm> taken(Loading loading, Space space, BoxMm room) {
    List<BoxMm> taken = new ArrayList<>();
    for (PlacedItem item : loading.placed().values()) {
      if (Boxes.overlap(item.box(), room)) {
        boolean keepsRoomAbove = item.item().bearsG() == 0L && item.space().id().equals(space.id());
        taken.add(
            keepsRoomAbove
                ? item.box().withHeights(item.box().minZMm(), room.maxZMm())
                : item.box());
      }
    }
    for (FittedModule module : loading.rig().modules().values()) {
      String id = module.module().id();
      if (!space.inModules().contains(id)) {
        if (Boxes.overlap(module.box(), room)) {
          taken.add(module.box());
        }
        if (!space.movesWith().contains(id) && Boxes.overlap(SlideTravel.swept(module), room)) {
          taken.add(SlideTravel.swept(module));
        }
      }
    }
    return taken;
  }

  /** Maximal boxes of a room that overlap none of the boxes that are taken. */
  static List<BoxMm> between(BoxMm room, List<BoxMm> taken) {
    Set<BoxMm> empty = new LinkedHashSet<>();
    empty.add(room);
    for (BoxMm obstacle : taken) {
      Set<BoxMm> next = new LinkedHashSet<>();
      for (BoxMm box : empty) {
        if (Boxes.overlap(box, obstacle)) {
          addParts(next, box, obstacle);
        } else {
          next.add(box);
        }
      }
      empty = maximal(next);
    }
    List<BoxMm> found = new ArrayList<>();
    for (BoxMm box : empty) {
      if (volumeMm3(box) > 0L) {
        found.add(box);
      }
    }
    return found;
  }

  private static void addParts(Set<BoxMm> parts, BoxMm box, BoxMm obstacle) {
    parts.addAll(Boxes.besideAndBelow(box, obstacle));
    if (obstacle.maxZMm() < box.maxZMm()) {
      parts.add(box.withHeights(obstacle.maxZMm(), box.maxZMm()));
    }
  }

  private static Set<BoxMm> maximal(Set<BoxMm> boxes) {
    Set<BoxMm> kept = new LinkedHashSet<>();
    for (BoxMm box : boxes) {
      boolean inside = false;
      for (BoxMm other : boxes) {
        inside |= !other.equals(box) && Boxes.protrusionMm(box, other) == 0;
      }
      if (!inside) {
        kept.add(box);
      }
    }
    return kept;
  }

  /** The box of the largest volume. */
  static Optional<BoxMm> largest(List<BoxMm> boxes) {
    BoxMm largest = null;
    for (BoxMm box : boxes) {
      if (largest == null || volumeMm3(box) > volumeMm3(largest)) {
        largest = box;
      }
    }
    return Optional.ofNullable(largest);
  }

  static long volumeMm3(BoxMm box) {
    return (long) box.lengthMm() * box.widthMm() * box.heightMm();
  }

  /** By how much a size is too large for a box along x, y and z; zero or less where it fits. */
  static int[] excessMm(SizeMm size, BoxMm box) {
    return new int[] {
      size.lengthMm() - box.lengthMm(),
      size.widthMm() - box.widthMm(),
      size.heightMm() - box.heightMm()
    };
  }
}
