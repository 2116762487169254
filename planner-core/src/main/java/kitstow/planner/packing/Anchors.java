package kitstow.planner.packing;

import java.util.Arrays;
import kitstow.planner.geometry.BoxMm;

/**
 * Where walls and things meet in a scene, for newcomers of any size: corners into which a newcomer
 * can be set with one of its own. Kept are those that are free, each with how far a thread drawn
 * from it along each axis runs free: whatever is longer, wider or higher does not go there.
 */
final class Anchors {
  private static final int FROM_BACK = 1;
  private static final int FROM_RIGHT = 2;
  private static final int LAST_BIT = Integer.SIZE - 1;

  private final Scene scene;
  private final BoxMm box;
  private final BoxMm room;
  private final int topZMm;
  private int size;
  private int[] xs = new int[32];
  private int[] ys = new int[32];
  private int[] zs = new int[32];
  private int[] corners = new int[32];
  private int[] freeX = new int[32];
  private int[] freeY = new int[32];
  private int[] freeZ = new int[32];

  /** The free corners of a scene as it is. */
  Anchors(Scene scene) {
    this.scene = scene;
    this.box = scene.site().space().box();
    this.room = scene.site().room();
    this.topZMm = Math.min(room.maxZMm(), scene.site().topZMm());
    rows(box.minXMm(), box.minZMm(), 0);
    rows(box.maxXMm(), box.minZMm(), FROM_BACK);
    BoxTable boxes = scene.boxes();
    for (int i = 0; i < scene.ownCount(); i++) {
      around(boxes, i);
    }
    for (int i = scene.ownCount(); i < boxes.count(); i++) {
      beside(boxes.minX(i), boxes.minY(i), boxes.maxX(i), boxes.maxY(i));
    }
    for (Site.Obstacle obstacle : scene.site().obstacles()) {
      BoxMm o = obstacle.box();
      beside(o.minXMm(), o.minYMm(), o.maxXMm(), o.maxYMm());
    }
  }

  /** Takes in one more thing of the scene's own space, which the scene has already. */
  void add(int thing) {
    BoxTable boxes = scene.boxes();
    int kept = 0;
    for (int i = 0; i < size; i++) {
      if (isFreeBeside(i, boxes, thing)) {
        if (kept < i) {
          move(i, kept);
        }
        kept++;
      }
    }
    size = kept;
    around(boxes, thing);
  }

  int count() {
    return size;
  }

  /** Whether a newcomer of a size can be set into a corner, as far as three threads tell. */
  boolean admits(int i, int length, int width, int height) {
    return ((freeX[i] - length) | (freeY[i] - width) | (freeZ[i] - height)) >= 0;
  }

  /** Least x of a newcomer of a length in a corner, mm. */
  int xMm(int i, int length) {
    return (corners[i] & FROM_BACK) != 0 ? xs[i] - length : xs[i];
  }

  /** Least y of a newcomer of a width in a corner, mm. */
  int yMm(int i, int width) {
    return (corners[i] & FROM_RIGHT) != 0 ? ys[i] - width : ys[i];
  }

  /** Least z of a newcomer in a corner, mm. */
  int zMm(int i) {
    return zs[i];
  }

  /** In front of, beside, behind and on top of a thing of the own space. */
  private void around(BoxTable boxes, int i) {
    int x0 = boxes.minX(i);
    int y0 = boxes.minY(i);
    int z0 = boxes.minZ(i);
    int x1 = boxes.maxX(i);
    int y1 = boxes.maxY(i);
    int z1 = boxes.maxZ(i);
    offer(x1, y0, z0, 0);
    offer(x1, y1, z0, FROM_RIGHT);
    offer(x0, y1, z0, 0);
    offer(x0, y0, z0, FROM_RIGHT);
    offer(box.minXMm(), y1, z0, 0);
    offer(box.minXMm(), y0, z0, FROM_RIGHT);
    rows(x1, z0, 0);
    offer(x0, y0, z1, 0);
    offer(x0, y1, z1, FROM_RIGHT);
    offer(x1, y0, z1, FROM_BACK);
    offer(x0, y0, z0, FROM_BACK);
  }

  /** On the floor, beside something that reaches in from elsewhere. */
  private void beside(int x0, int y0, int x1, int y1) {
    int z = box.minZMm();
    rows(x1, z, 0);
    rows(x0, z, FROM_BACK);
    offer(box.minXMm(), y1, z, 0);
    offer(box.minXMm(), y0, z, FROM_RIGHT);
    offer(x1, y1, z, 0);
    offer(x1, y0, z, FROM_RIGHT);
  }

  /** Both side walls at one x and z. */
  private void rows(int x, int z, int corner) {
    offer(x, box.minYMm(), z, corner);
    offer(x, box.maxYMm(), z, corner | FROM_RIGHT);
  }

  /** A corner, kept if it is free, in the room and new. */
  private void offer(int x, int y, int z, int corner) {
    boolean back = (corner & FROM_BACK) != 0;
    boolean right = (corner & FROM_RIGHT) != 0;
    boolean outside =
        (back ? x > room.maxXMm() : x < room.minXMm())
            || (right ? y > room.maxYMm() : y < room.minYMm())
            || z < room.minZMm();
    int alongX = back ? x - room.minXMm() : room.maxXMm() - x;
    int alongY = right ? y - room.minYMm() : room.maxYMm() - y;
    int alongZ = topZMm - z;
    if (outside || alongX <= 0 || alongY <= 0 || alongZ <= 0) {
      return;
    }
    BoxTable boxes = scene.boxes();
    // The millimetre of a newcomer that is set into the corner.
    int cellX = back ? x - 1 : x;
    int cellY = right ? y - 1 : y;
    if (boxes.overlaps(cellX, cellY, z, cellX + 1, cellY + 1, z + 1) || isKnown(x, y, z, corner)) {
      return;
    }
    int at = keep(x, y, z, corner);
    freeX[at] = alongX;
    freeY[at] = alongY;
    freeZ[at] = alongZ;
    for (int i = 0; i < boxes.count(); i++) {
      isFreeBeside(at, boxes, i);
    }
  }

  /** Shortens the threads of a corner to where they meet a thing, if that leaves it free. */
  private boolean isFreeBeside(int at, BoxTable boxes, int i) {
    int back = -(corners[at] & FROM_BACK);
    int right = -((corners[at] & FROM_RIGHT) >> 1);
    int x = xs[at];
    int y = ys[at];
    int z = zs[at];
    int cellX = x + back;
    int cellY = y + right;
    // Each -1 where the corner lies within the thing's extent on that axis, else 0.
    int inX = ((boxes.minX(i) - cellX - 1) & (cellX - boxes.maxX(i))) >> LAST_BIT;
    int inY = ((boxes.minY(i) - cellY - 1) & (cellY - boxes.maxY(i))) >> LAST_BIT;
    int inZ = ((boxes.minZ(i) - z - 1) & (z - boxes.maxZ(i))) >> LAST_BIT;
    int alongX = back < 0 ? x - boxes.maxX(i) : boxes.minX(i) - x;
    int alongY = right < 0 ? y - boxes.maxY(i) : boxes.minY(i) - y;
    int alongZ = boxes.minZ(i) - z;
    freeX[at] = shorter(freeX[at], alongX, inY & inZ);
    freeY[at] = shorter(freeY[at], alongY, inX & inZ);
    freeZ[at] = shorter(freeZ[at], alongZ, inX & inY);
    return (inX & inY & inZ) == 0;
  }

  /** A thread no longer than to what it meets, if it does (-1) and that lies ahead. */
  private static int shorter(int thread, int distance, int meets) {
    int ahead = meets & ~(distance >> LAST_BIT);
    return Math.min(thread, (distance & ahead) | (Integer.MAX_VALUE & ~ahead));
  }

  private boolean isKnown(int x, int y, int z, int corner) {
    for (int i = 0; i < size; i++) {
      if (((xs[i] ^ x) | (ys[i] ^ y) | (zs[i] ^ z) | (corners[i] ^ corner)) == 0) {
        return true;
      }
    }
    return false;
  }

  private int keep(int x, int y, int z, int corner) {
    if (size == xs.length) {
      xs = Arrays.copyOf(xs, 2 * size);
      ys = Arrays.copyOf(ys, 2 * size);
      zs = Arrays.copyOf(zs, 2 * size);
      corners = Arrays.copyOf(corners, 2 * size);
      freeX = Arrays.copyOf(freeX, 2 * size);
      freeY = Arrays.copyOf(freeY, 2 * size);
      freeZ = Arrays.copyOf(freeZ, 2 * size);
    }
    xs[size] = x;
    ys[size] = y;
    zs[size] = z;
    corners[size] = corner;
    return size++;
  }

  private void move(int from, int to) {
    xs[to] = xs[from];
    ys[to] = ys[from];
    zs[to] = zs[from];
    corners[to] = corners[from];
    freeX[to] = freeX[from];
    freeY[to] = freeY[from];
    freeZ[to] = freeZ[from];
  }
}
