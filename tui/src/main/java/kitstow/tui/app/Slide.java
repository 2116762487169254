package kitstow.tui.app;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.PointMm;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.packing.Room;
import kitstow.tui.view.Eye;

/**
 * A thing pushed along, across or up within its space, to the next place where it lies against
 * something: a wall, a neighbour, the top of what is below. Pushed level it goes past what is in
 * the way and comes down on what is beneath it.
 */
final class Slide {
  /** The three ways to push. */
  enum Axis {
    /** Along the vehicle. */
    X,
    /** Across the vehicle. */
    Y,
    /** Up and down. */
    Z
  }

  private final PlacedItem item;
  private final BoxMm room;
  private final List<BoxMm> others = new ArrayList<>();

  Slide(Loading loading, PlacedItem item) {
    this.item = item;
    this.room = Room.of(item.space());
    for (PlacedItem other : loading.in(item.space().id())) {
      if (!other.key().equals(item.key())) {
        others.add(other.box());
      }
    }
  }

  /** Where it goes when pushed; nowhere if it lies against the end. */
  Optional<BoxMm> pushed(Axis axis, int sign, boolean finely, int fineMm) {
    if (axis == Axis.Z) {
      return lifted(sign);
    }
    if (finely) {
      BoxMm moved = clamped(moved(item.box(), axis, sign * fineMm), axis);
      return moved.equals(item.box()) ? Optional.empty() : Optional.of(moved);
    }
    BoxMm first = null;
    for (int offset : stops(axis, sign)) {
      BoxMm moved = moved(item.box(), axis, offset);
      if (free(moved)) {
        return Optional.of(down(moved));
      }
      first = first == null ? moved : first;
    }
    return Optional.ofNullable(first).map(this::onTop);
  }

  /**
   * Where it comes to stand when it is carried to a spot of a view: with its middle there, as far
   * as the room allows, on what lies below the spot; seen from above, on top of all that is there.
   */
  BoxMm near(Eye eye, int acrossMm, int upMm) {
    Axis across = eye == Eye.REAR ? Axis.Y : Axis.X;
    BoxMm box = centred(item.box(), across, acrossMm);
    if (eye.flat()) {
      return onTop(centred(box, Axis.Y, upMm));
    }
    int level = room.minZMm();
    for (BoxMm other : others) {
      if (overlapFlat(other, box) && other.maxZMm() <= upMm) {
        level = Math.max(level, other.maxZMm());
      }
    }
    return moved(box, Axis.Z, level - box.minZMm());
  }

  private BoxMm centred(BoxMm box, Axis axis, int mm) {
    int middle = (min(box, axis) + max(box, axis)) / 2;
    return clamped(moved(box, axis, mm - middle), axis);
  }

  /** Offsets to the places where it would lie against something, the nearest first. */
  private List<Integer> stops(Axis axis, int sign) {
    int min = min(item.box(), axis);
    int max = max(item.box(), axis);
    List<Integer> offsets = new ArrayList<>();
    offsets.add(min(room, axis) - min);
    offsets.add(max(room, axis) - max);
    for (BoxMm other : others) {
      offsets.add(min(other, axis) - max);
      offsets.add(max(other, axis) - min);
      offsets.add(min(other, axis) - min);
      offsets.add(max(other, axis) - max);
    }
    List<Integer> ahead = new ArrayList<>();
    for (int offset : offsets) {
      boolean inside = min + offset >= min(room, axis) && max + offset <= max(room, axis);
      if (Integer.signum(offset) == sign && inside && !ahead.contains(offset)) {
        ahead.add(offset);
      }
    }
    ahead.sort((a, b) -> Integer.compare(Math.abs(a), Math.abs(b)));
    return ahead;
  }

  private Optional<BoxMm> lifted(int sign) {
    List<Integer> levels = new ArrayList<>(List.of(room.minZMm()));
    for (BoxMm other : others) {
      if (overlapFlat(other, item.box())
          && other.maxZMm() + item.box().heightMm() <= room.maxZMm()) {
        levels.add(other.maxZMm());
      }
    }
    Collections.sort(levels);
    if (sign < 0) {
      Collections.reverse(levels);
    }
    for (int level : levels) {
      int offset = level - item.box().minZMm();
      if (Integer.signum(offset) == sign) {
        return Optional.of(moved(item.box(), Axis.Z, offset));
      }
    }
    return Optional.empty();
  }

  private boolean free(BoxMm box) {
    for (BoxMm other : others) {
      if (overlapFlat(other, box)
          && other.minZMm() < box.maxZMm()
          && box.minZMm() < other.maxZMm()) {
        return false;
      }
    }
    return true;
  }

  /** Lowered onto what is beneath it. */
  private BoxMm down(BoxMm box) {
    int level = room.minZMm();
    for (BoxMm other : others) {
      if (overlapFlat(other, box) && other.maxZMm() <= box.minZMm()) {
        level = Math.max(level, other.maxZMm());
      }
    }
    return moved(box, Axis.Z, level - box.minZMm());
  }

  /** Lifted onto all that is in the way. */
  private BoxMm onTop(BoxMm box) {
    int level = room.minZMm();
    for (BoxMm other : others) {
      if (overlapFlat(other, box)) {
        level = Math.max(level, other.maxZMm());
      }
    }
    return moved(box, Axis.Z, level - box.minZMm());
  }

  private BoxMm clamped(BoxMm box, Axis axis) {
    int low = Math.max(0, min(room, axis) - min(box, axis));
    int high = Math.min(0, max(room, axis) - max(box, axis));
    return moved(box, axis, low != 0 ? low : high);
  }

  private static boolean overlapFlat(BoxMm a, BoxMm b) {
    return a.minXMm() < b.maxXMm()
        && b.minXMm() < a.maxXMm()
        && a.minYMm() < b.maxYMm()
        && b.minYMm() < a.maxYMm();
  }

  private static BoxMm moved(BoxMm box, Axis axis, int offset) {
    return box.moved(
        switch (axis) {
          case X -> new PointMm(offset, 0, 0);
          case Y -> new PointMm(0, offset, 0);
          case Z -> new PointMm(0, 0, offset);
        });
  }

  private static int min(BoxMm box, Axis axis) {
    return switch (axis) {
      case X -> box.minXMm();
      case Y -> box.minYMm();
      case Z -> box.minZMm();
    };
  }

  private static int max(BoxMm box, Axis axis) {
    return switch (axis) {
      case X -> box.maxXMm();
      case Y -> box.maxYMm();
      case Z -> box.maxZMm();
    };
  }
}
