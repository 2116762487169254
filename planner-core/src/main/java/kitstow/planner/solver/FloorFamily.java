package kitstow.planner.solver;

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

  /** Number of families. */
  static final int COUNT = PAIRS.length;

  private FloorFamily() {}

  /** Share of a section that a thing takes, 0 to 1. */
  static double share(int family, int widthMm, int ofWidthMm, int heightMm, int ofHeightMm) {
    return scale(PAIRS[family][0], widthMm, ofWidthMm)
        * scale(PAIRS[family][1], heightMm, ofHeightMm);
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
