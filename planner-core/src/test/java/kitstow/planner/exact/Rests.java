package kitstow.planner.exact;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.geometry.BoxMm;

/**
 * Where the base of a box rests on what is below it: by how much, and whether its middle lies in
 * the convex hull of that.
 */
final class Rests {
  private final BoxMm box;
  private final List<long[]> corners = new ArrayList<>();
  private long areaMm2;

  Rests(BoxMm box) {
    this.box = box;
  }

  /** Rests on another box too, whose top is level with the base. */
  void on(BoxMm below) {
    int x0 = Math.max(box.minXMm(), below.minXMm());
    int x1 = Math.min(box.maxXMm(), below.maxXMm());
    int y0 = Math.max(box.minYMm(), below.minYMm());
    int y1 = Math.min(box.maxYMm(), below.maxYMm());
    if (x0 < x1 && y0 < y1) {
      areaMm2 += (long) (x1 - x0) * (y1 - y0);
      for (int x : new int[] {x0, x1}) {
        for (int y : new int[] {y0, y1}) {
          corners.add(fromMiddle(x, y));
        }
      }
    }
  }

  /** A point as seen from the middle of the base, doubled so that it stays whole. */
  private long[] fromMiddle(int x, int y) {
    return new long[] {2L * x - box.minXMm() - box.maxXMm(), 2L * y - box.minYMm() - box.maxYMm()};
  }

  /** Whether it rests on a share of its base or more, with its middle held. */
  boolean enough(int permille) {
    long base = (long) (box.maxXMm() - box.minXMm()) * (box.maxYMm() - box.minYMm());
    return areaMm2 > 0L && areaMm2 * 1000L >= permille * base && holdsMiddle();
  }

  /**
   * Whether no line through the middle has all corners strictly on one side. If there is such a
   * line, there is one as near to it as one likes through a corner, with all others on one side of
   * it or ahead on it.
   */
  private boolean holdsMiddle() {
    for (long[] one : corners) {
      boolean allBeside = true;
      for (long[] other : corners) {
        long turn = one[0] * other[1] - one[1] * other[0];
        long ahead = one[0] * other[0] + one[1] * other[1];
        allBeside &= turn > 0L || (turn == 0L && ahead > 0L);
      }
      if (allBeside) {
        return false;
      }
    }
    return true;
  }
}
