package kitstow.planner.packing;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.geometry.BoxMm;
import org.jspecify.annotations.Nullable;

/**
 * The largest empty boxes of a space that is being filled from below, each with one flat base under
 * all of it: the floor, or the top of what carries something. They may share volume (maximal empty
 * spaces, after K. K. Lai, J. W. M. Chan, 1997; from memory).
 */
final class EmptyRooms {
  /** One of them, and what its base carries, grams. */
  record EmptyRoom(int x0, int y0, int z0, int x1, int y1, int z1, long bearsG) {
    int lengthMm() {
      return x1 - x0;
    }

    int widthMm() {
      return y1 - y0;
    }

    int heightMm() {
      return z1 - z0;
    }

    private boolean meets(int minX, int minY, int minZ, int maxX, int maxY, int maxZ) {
      return x0 < maxX && minX < x1 && y0 < maxY && minY < y1 && z0 < maxZ && minZ < z1;
    }

    private boolean isWithin(EmptyRoom other) {
      return x0 >= other.x0
          && y0 >= other.y0
          && z0 >= other.z0
          && x1 <= other.x1
          && y1 <= other.y1
          && z1 <= other.z1
          && bearsG <= other.bearsG;
    }

    private boolean isBefore(EmptyRoom other) {
      if (x0 != other.x0) {
        return x0 < other.x0;
      }
      return z0 != other.z0 ? z0 < other.z0 : y0 < other.y0;
    }
  }

  private final int topZMm;
  private List<EmptyRoom> rooms = new ArrayList<>();

  /** The whole of a box, whose floor carries anything. */
  EmptyRooms(BoxMm box, int topZMm) {
    this.topZMm = topZMm;
    EmptyRoom whole =
        new EmptyRoom(
            box.minXMm(),
            box.minYMm(),
            box.minZMm(),
            box.maxXMm(),
            box.maxYMm(),
            topZMm,
            Long.MAX_VALUE);
    if (whole.heightMm() > 0) {
      rooms.add(whole);
    }
  }

  /** The same rooms to be filled another time. */
  EmptyRooms(EmptyRooms like) {
    this.topZMm = like.topZMm;
    this.rooms = new ArrayList<>(like.rooms);
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
  void take(int x0, int y0, int z0, int x1, int y1, int z1, long bearsG) {
    List<EmptyRoom> cut = new ArrayList<>(rooms.size() + 5);
    for (EmptyRoom room : rooms) {
      if (room.meets(x0, y0, z0, x1, y1, z1)) {
        addCut(cut, room, x0, y0, z0, x1, y1);
      } else {
        cut.add(room);
      }
    }
    if (bearsG > 0L && z1 < topZMm) {
      cut.add(new EmptyRoom(x0, y0, z1, x1, y1, topZMm, bearsG));
    }
    rooms = largest(cut);
  }

  /** In front, behind, left, right and below; what is above has no base of its own. */
  private static void addCut(
      List<EmptyRoom> cut, EmptyRoom room, int x0, int y0, int z0, int x1, int y1) {
    if (x0 > room.x0) {
      cut.add(new EmptyRoom(room.x0, room.y0, room.z0, x0, room.y1, room.z1, room.bearsG));
    }
    if (x1 < room.x1) {
      cut.add(new EmptyRoom(x1, room.y0, room.z0, room.x1, room.y1, room.z1, room.bearsG));
    }
    if (y0 > room.y0) {
      cut.add(new EmptyRoom(room.x0, room.y0, room.z0, room.x1, y0, room.z1, room.bearsG));
    }
    if (y1 < room.y1) {
      cut.add(new EmptyRoom(room.x0, y1, room.z0, room.x1, room.y1, room.z1, room.bearsG));
    }
    if (z0 > room.z0) {
      cut.add(new EmptyRoom(room.x0, room.y0, room.z0, room.x1, room.y1, z0, room.bearsG));
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
