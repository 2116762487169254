package kitstow.planner.solver;

import java.util.Set;

/**
 * Shares of a section that things cut by one plane can never have more than 1 of in all: products
 * of two dual feasible functions, one for the width and one for the height. Such products are
 * conservative scales for rectangles in a rectangle (S. P. Fekete, J. Schepers, A general framework
 * for bounds for higher-dimensional orthogonal packing problems, 2004; from memory; proved where
 * the floor is explained).
 */
final class FloorFamily {
  /** Pairs of functions: 0 is the plain share, k counts in (k + 1)-ths. */
  private static final int[][] PAIRS = {{0, 0}, {1, 0}, {0, 1}, {1, 1}, {2, 0}, {0, 2}, {2, 2}};

  /** Functions of the width alone, for what has nothing above it: no two share a vertical line. */
  private static final int[] ALONE = {0, 1};

  /** Number of families. */
  static final int COUNT = PAIRS.length + ALONE.length;

  private FloorFamily() {}

  /** What makes the floor higher than sections and slices alone do. */
  enum Part {
    /** Counting in halves and thirds. */
    COUNTS,
    /** What leaves no room for anything above or beside it takes the section whole. */
    WHOLE,
    /** What carries nothing has no other such thing above or below it. */
    ALONE,
    /** Mass limits. */
    LIMITS
  }

  /** Which families are used. */
  static boolean[] used(Set<Part> parts) {
    boolean[] used = new boolean[COUNT];
    for (int k = 0; k < COUNT; k++) {
      used[k] = k == 0 || parts.contains(k < PAIRS.length ? Part.COUNTS : Part.ALONE);
    }
    return used;
  }

  /**
   * Share of a section that a thing takes, 0 to 1.
   *
   * @param alone whether nothing may be above it
   */
  static double share(
      int family, int widthMm, int ofWidthMm, int heightMm, int ofHeightMm, boolean alone) {
    if (family < PAIRS.length) {
      return scale(PAIRS[family][0], widthMm, ofWidthMm)
          * scale(PAIRS[family][1], heightMm, ofHeightMm);
    }
    return alone ? scale(ALONE[family - PAIRS.length], widthMm, ofWidthMm) : 0.0;
  }

  /**
   * The dual feasible function f(k): x itself where (k + 1) x is whole, else the whole part of (k +
   * 1) x in k-ths. In whole millimetres, so that no rounding blurs the jumps.
   */
  private static double scale(int k, int partMm, int ofMm) {
    if (k == 0) {
      return (double) partMm / ofMm;
    }
    long times = (k + 1L) * partMm;
    long whole = times / ofMm;
    return times % ofMm == 0L ? (double) partMm / ofMm : (double) whole / k;
  }
}
