package kitstow.planner.packing;

import java.util.Arrays;
import kitstow.planner.geometry.BoxMm;

/**
 * Boxes as columns of plain numbers, and the quick tests of a newcomer against all of them at once.
 * The tests take no branches but the loop's: a difference is negative where a comparison holds, and
 * the sign of the bitwise "and" of several tells whether all do. A branch a box, which no processor
 * can foresee, takes several times as long.
 */
final class BoxTable {
  private int[] minX;
  private int[] minY;
  private int[] minZ;
  private int[] maxX;
  private int[] maxY;
  private int[] maxZ;
  private int count;

  /** An empty table with room for so many boxes before it grows. */
  BoxTable(int capacity) {
    int size = Math.max(1, capacity);
    this.minX = new int[size];
    this.minY = new int[size];
    this.minZ = new int[size];
    this.maxX = new int[size];
    this.maxY = new int[size];
    this.maxZ = new int[size];
  }

  int count() {
    return count;
  }

  /** Puts a box in at an index, before those that are there and after it. */
  void insert(int at, BoxMm box) {
    minX = inserted(minX, at, box.minXMm());
    minY = inserted(minY, at, box.minYMm());
    minZ = inserted(minZ, at, box.minZMm());
    maxX = inserted(maxX, at, box.maxXMm());
    maxY = inserted(maxY, at, box.maxYMm());
    maxZ = inserted(maxZ, at, box.maxZMm());
    count++;
  }

  private int[] inserted(int[] column, int at, int value) {
    int[] wide = count == column.length ? Arrays.copyOf(column, 2 * count) : column;
    System.arraycopy(wide, at, wide, at + 1, count - at);
    wide[at] = value;
    return wide;
  }

  int minX(int i) {
    return minX[i];
  }

  int minY(int i) {
    return minY[i];
  }

  int minZ(int i) {
    return minZ[i];
  }

  int maxX(int i) {
    return maxX[i];
  }

  int maxY(int i) {
    return maxY[i];
  }

  int maxZ(int i) {
    return maxZ[i];
  }

  /** Whether any shares volume with a box. */
  boolean overlaps(int x0, int y0, int z0, int x1, int y1, int z1) {
    int any = 0;
    for (int i = 0; i < count; i++) {
      any |=
          (x0 - maxX[i])
              & (minX[i] - x1)
              & (y0 - maxY[i])
              & (minY[i] - y1)
              & (z0 - maxZ[i])
              & (minZ[i] - z1);
    }
    return any < 0;
  }

  /**
   * Whether a newcomer stands under or over one of the first few boxes of which the lower bears
   * nothing.
   *
   * @param bearsNothing by box, -1 where nothing may stand on it, else 0
   * @param itselfBearsNothing the same of the newcomer
   * @param never -1 where nothing may stand on anything, else 0
   */
  boolean columnTaken(
      int x0,
      int y0,
      int z0,
      int x1,
      int y1,
      int first,
      int[] bearsNothing,
      int itselfBearsNothing,
      int never) {
    int any = 0;
    for (int i = 0; i < first; i++) {
      int over = (x0 - maxX[i]) & (minX[i] - x1) & (y0 - maxY[i]) & (minY[i] - y1);
      int below = (z0 - maxZ[i]) >> (Integer.SIZE - 1);
      any |= over & (never | (below & itselfBearsNothing) | (~below & bearsNothing[i]));
    }
    return any < 0;
  }

  /** Contact of a base with the tops of the first few boxes, mm². */
  long contactMm2(int x0, int y0, int z, int x1, int y1, int first) {
    long area = 0L;
    for (int i = 0; i < first; i++) {
      int x = Math.max(0, Math.min(x1, maxX[i]) - Math.max(x0, minX[i]));
      int y = Math.max(0, Math.min(y1, maxY[i]) - Math.max(y0, minY[i]));
      area += maxZ[i] == z ? (long) x * y : 0L;
    }
    return area;
  }

  /** How far forward a box can be moved until it meets another or a wall. */
  int forwardFrom(int x0, int y0, int z0, int y1, int z1, int wallX) {
    int front = wallX;
    for (int i = 0; i < count; i++) {
      int meets =
          (maxX[i] - x0 - 1) & (y0 - maxY[i]) & (minY[i] - y1) & (z0 - maxZ[i]) & (minZ[i] - z1);
      front = Math.max(front, meets < 0 ? maxX[i] : wallX);
    }
    return front;
  }

  @Override
  public String toString() {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < count; i++) {
      text.append(
          String.join(
              " ",
              "[" + minX[i],
              "" + minY[i],
              "" + minZ[i],
              "" + maxX[i],
              "" + maxY[i],
              maxZ[i] + "]"));
    }
    return text.toString();
  }
}
