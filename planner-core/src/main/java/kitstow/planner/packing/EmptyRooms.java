package kitstow.planner.packing;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.Boxes;
import org.jspecify.annotations.Nullable;

/**
 * The largest empty boxes of a space that is being filled from below, each with one flat base under
 * all of it: the floor, or tops of what carries something that are level with each other. They may
 * share volume (maximal empty spaces, after K. K. Lai, J. W. M. Chan, 1997; from memory).
 */
final class EmptyRooms {
  /** One of them, and what its base carries, grams. */
  record EmptyRoom(BoxMm box, long bearsG) {
    private boolean isWithin(EmptyRoom other) {
      return box.minXMm() >= other.box.minXMm()
          && box.minYMm() >= other.box.minYMm()
          && box.minZMm() >= other.box.minZMm()
          && box.maxXMm() <= other.box.maxXMm()
          && box.maxYMm() <= other.box.maxYMm()
          && box.maxZMm() <= other.box.maxZMm()
          && bearsG <= other.bearsG;
    }

    private boolean isBefore(EmptyRoom other) {
      if (box.minXMm() != other.box.minXMm()) {
        return box.minXMm() < other.box.minXMm();
      }
      return box.minZMm() != other.box.minZMm()
          ? box.minZMm() < other.box.minZMm()
          : box.minYMm() < other.box.minYMm();
    }

    /** In front, behind, left, right and below; what is above has no base of its own. */
    private void addWithout(BoxMm taken, List<EmptyRoom> cut) {
      for (BoxMm part : Boxes.besideAndBelow(box, taken)) {
        cut.add(new EmptyRoom(part, bearsG));
      }
    }
  }

  private static final int MOST_CUTS = 5;

  private final int topZMm;
  private final List<EmptyRoom> tops;
  private final List<BoxMm> taken;
  private List<EmptyRoom> rooms = new ArrayList<>();

  /** The whole of a box, whose floor carries anything. */
  EmptyRooms(BoxMm box, int topZMm) {
    this.topZMm = topZMm;
    this.tops = new ArrayList<>();
    this.taken = new ArrayList<>();
    if (topZMm > box.minZMm()) {
      rooms.add(new EmptyRoom(box.withHeights(box.minZMm(), topZMm), Long.MAX_VALUE));
    }
  }

  /** The same rooms to be filled another time. */
  EmptyRooms(EmptyRooms like) {
    this.topZMm = like.topZMm;
    this.rooms = new ArrayList<>(like.rooms);
    this.tops = new ArrayList<>(like.tops);
    this.taken = new ArrayList<>(like.taken);
  }

  /** The room that lies farthest forward, of those the lowest; null where none is left. */
  @Nullable EmptyRoom foremost() {
    EmptyRoom best = null;
    for (EmptyRoom room : rooms) {
      if (best == null || room.isBefore(best)) {
        best = room;
      }
    }
    return best;
  }

  /** Gives a room up. */
  void giveUp(EmptyRoom room) {
    rooms.remove(room);
  }

  /** Something takes a box; on top of it there may be room again. */
  void take(BoxMm box, long bearsG) {
    List<EmptyRoom> cut = without(rooms, box);
    taken.add(box);
    if (bearsG > 0L && box.maxZMm() < topZMm) {
      addTop(new EmptyRoom(box.withHeights(box.maxZMm(), topZMm), bearsG), cut);
    }
    rooms = largest(cut);
  }

  private static List<EmptyRoom> without(List<EmptyRoom> rooms, BoxMm box) {
    List<EmptyRoom> cut = new ArrayList<>(rooms.size() + MOST_CUTS);
    for (EmptyRoom room : rooms) {
      if (Boxes.overlap(room.box, box)) {
        room.addWithout(box, cut);
      } else {
        cut.add(room);
      }
    }
    return cut;
  }

  /** Room on a top, and on what it makes together with tops beside it that are level with it. */
  private void addTop(EmptyRoom top, List<EmptyRoom> to) {
    to.addAll(free(top));
    List<EmptyRoom> level = new ArrayList<>();
    for (EmptyRoom other : tops) {
      if (other.box.minZMm() == top.box.minZMm()) {
        addAcross(top, other, level);
      }
    }
    tops.add(top);
    for (EmptyRoom wide : level) {
      if (tops.stream().noneMatch(wide::isWithin)) {
        tops.add(wide);
        to.addAll(free(wide));
      }
    }
  }

  /** What is left of a room beside all that has been taken. */
  private List<EmptyRoom> free(EmptyRoom room) {
    List<EmptyRoom> free = List.of(room);
    for (BoxMm box : taken) {
      if (Boxes.overlap(room.box, box)) {
        free = without(free, box);
      }
    }
    return free;
  }

  /** What lies across both of two level tops that meet: along the ute, and across it. */
  private static void addAcross(EmptyRoom one, EmptyRoom other, List<EmptyRoom> to) {
    BoxMm a = one.box;
    BoxMm b = other.box;
    int x0 = Math.max(a.minXMm(), b.minXMm());
    int x1 = Math.min(a.maxXMm(), b.maxXMm());
    int y0 = Math.max(a.minYMm(), b.minYMm());
    int y1 = Math.min(a.maxYMm(), b.maxYMm());
    if (x0 > x1 || y0 > y1) {
      return;
    }
    long bearsG = Math.min(one.bearsG, other.bearsG);
    if (y0 < y1) {
      int front = Math.min(a.minXMm(), b.minXMm());
      int rear = Math.max(a.maxXMm(), b.maxXMm());
      to.add(new EmptyRoom(new BoxMm(front, y0, a.minZMm(), rear, y1, a.maxZMm()), bearsG));
    }
    if (x0 < x1) {
      int leftMost = Math.min(a.minYMm(), b.minYMm());
      int rightMost = Math.max(a.maxYMm(), b.maxYMm());
      to.add(new EmptyRoom(new BoxMm(x0, leftMost, a.minZMm(), x1, rightMost, a.maxZMm()), bearsG));
    }
  }

  private static List<EmptyRoom> largest(List<EmptyRoom> all) {
    List<EmptyRoom> kept = new ArrayList<>(all.size());
    for (int i = 0; i < all.size(); i++) {
      boolean within = false;
      for (int j = 0; j < all.size() && !within; j++) {
        within =
            i != j
                && all.get(i).isWithin(all.get(j))
                && (j < i || !all.get(j).isWithin(all.get(i)));
      }
      if (!within) {
        kept.add(all.get(i));
      }
    }
    return kept;
  }
}
