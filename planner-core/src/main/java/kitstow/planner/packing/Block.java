package kitstow.planner.packing;

import java.util.Arrays;
import java.util.function.IntPredicate;
import kitstow.planner.geometry.PointMm;
import kitstow.planner.geometry.SizeMm;
import org.jspecify.annotations.Nullable;

/**
 * Units that stand together as one box without any gap: like units in rows, or two such boxes whose
 * faces match (after the general blocks of T. Fanslau, A. Bortfeldt, 2010; from memory). Its front,
 * left, lower corner is the origin; every base in it lies wholly on its floor or on units of it.
 */
final class Block {
  /** Where the second of two blocks goes. */
  enum Side {
    BEHIND,
    BESIDE,
    ON_TOP
  }

  /** Called for each unit of a block. */
  interface Stander {
    /** A unit of a kind in a pose with its front, left, lower corner at a point. */
    void stand(int kind, int pose, PointMm corner);
  }

  /** Which poses are allowed. */
  interface PoseTest {
    /** Whether units of a kind may stand in a pose. */
    boolean test(int kind, int pose);
  }

  /** Like units of one pose. */
  private record Rows(int pose, SizeMm unit) {}

  /** Two blocks. */
  private record Join(Block first, Block second, Side side) {}

  private final SizeMm size;
  private final long massG;
  private final long doubledMomentGMm;
  private final long bearsG;
  private final int[] kinds;
  private final int[] counts;
  private final @Nullable Rows rows;
  private final @Nullable Join join;

  /**
   * Like units in rows.
   *
   * @param along so many along each axis
   * @param unitMassG mass of one, grams
   * @param unitBearsG what one carries, grams
   */
  Block(int kind, int pose, SizeMm unit, int[] along, long unitMassG, long unitBearsG) {
    int count = along[0] * along[1] * along[2];
    this.size =
        new SizeMm(
            along[0] * unit.lengthMm(), along[1] * unit.widthMm(), along[2] * unit.heightMm());
    this.massG = count * unitMassG;
    this.doubledMomentGMm = massG * size.lengthMm();
    this.bearsG = unitBearsG - (along[2] - 1) * unitMassG;
    this.kinds = new int[] {kind};
    this.counts = new int[] {count};
    this.rows = new Rows(pose, unit);
    this.join = null;
  }

  /**
   * Two blocks that may be joined, see {@link #mayJoin}.
   *
   * @param side where the second goes
   */
  Block(Block first, Block second, Side side) {
    SizeMm a = first.size;
    SizeMm b = second.size;
    this.size =
        new SizeMm(
            a.lengthMm() + (side == Side.BEHIND ? b.lengthMm() : 0),
            a.widthMm() + (side == Side.BESIDE ? b.widthMm() : 0),
            a.heightMm() + (side == Side.ON_TOP ? b.heightMm() : 0));
    this.massG = first.massG + second.massG;
    long backMm = side == Side.BEHIND ? a.lengthMm() : 0L;
    this.doubledMomentGMm =
        first.doubledMomentGMm + second.doubledMomentGMm + 2L * second.massG * backMm;
    this.bearsG =
        Math.min(second.bearsG, side == Side.ON_TOP ? first.bearsG - second.massG : first.bearsG);
    int[] both = new int[first.kinds.length + second.kinds.length];
    int[] counted = new int[both.length];
    int used = merge(first, second, both, counted);
    this.kinds = Arrays.copyOf(both, used);
    this.counts = Arrays.copyOf(counted, used);
    this.rows = null;
    this.join = new Join(first, second, side);
  }

  /** Counts of two blocks by kind, kinds in ascending order; returns how many kinds. */
  private static int merge(Block a, Block b, int[] kinds, int[] counts) {
    int i = 0;
    int j = 0;
    int used = 0;
    while (i < a.kinds.length || j < b.kinds.length) {
      int kindA = i < a.kinds.length ? a.kinds[i] : Integer.MAX_VALUE;
      int kindB = j < b.kinds.length ? b.kinds[j] : Integer.MAX_VALUE;
      kinds[used] = Math.min(kindA, kindB);
      counts[used] = (kindA <= kindB ? a.counts[i++] : 0) + (kindB <= kindA ? b.counts[j++] : 0);
      used++;
    }
    return used;
  }

  /**
   * Whether two blocks whose faces match make one: not rows of the same units, which are rows
   * anyway; not too heavy for the lower; no larger than a limit; no more units than there are.
   */
  static boolean mayJoin(Block first, Block second, Side side, SizeMm limit, int[] counts) {
    SizeMm a = first.size;
    SizeMm b = second.size;
    boolean fits =
        switch (side) {
          case BEHIND -> a.lengthMm() + b.lengthMm() <= limit.lengthMm();
          case BESIDE -> a.widthMm() + b.widthMm() <= limit.widthMm();
          case ON_TOP ->
              a.heightMm() + b.heightMm() <= limit.heightMm() && second.massG <= first.bearsG;
        };
    boolean alike = first.rows != null && second.rows != null && first.kinds[0] == second.kinds[0];
    return fits && !alike && first.areWithin(second, counts);
  }

  private boolean areWithin(Block other, int[] left) {
    for (int i = 0; i < kinds.length; i++) {
      for (int j = 0; j < other.kinds.length; j++) {
        if (kinds[i] == other.kinds[j] && counts[i] + other.counts[j] > left[kinds[i]]) {
          return false;
        }
      }
    }
    return true;
  }

  SizeMm size() {
    return size;
  }

  /** Mass of all its units, grams. */
  long massG() {
    return massG;
  }

  /** Twice its mass times how far its centre of mass is behind its front. */
  long doubledMomentGMm() {
    return doubledMomentGMm;
  }

  /** What may go on top of it, grams. */
  long bearsG() {
    return bearsG;
  }

  /** Whether there are as many units of each kind as it takes. */
  boolean isWithin(int[] left) {
    for (int i = 0; i < kinds.length; i++) {
      if (counts[i] > left[kinds[i]]) {
        return false;
      }
    }
    return true;
  }

  /** Takes its units off what is left of each kind. */
  void takeFrom(int[] left) {
    for (int i = 0; i < kinds.length; i++) {
      left[kinds[i]] -= counts[i];
    }
  }

  /** Whether any of its units is of a kind that is asked for. */
  boolean anyOf(IntPredicate asked) {
    return Arrays.stream(kinds).anyMatch(asked);
  }

  /** Whether every unit of it may stand as it does. */
  boolean isAllowed(PoseTest poses) {
    Join two = join;
    Rows alike = rows;
    return two == null
        ? alike != null && poses.test(kinds[0], alike.pose())
        : two.first().isAllowed(poses) && two.second().isAllowed(poses);
  }

  /** All its units when it stands at a corner, lower ones before those on top of them. */
  void stand(PointMm corner, Stander stander) {
    Join two = join;
    if (two != null) {
      two.first().stand(corner, stander);
      two.second().stand(beyond(corner, two), stander);
    }
    Rows alike = rows;
    if (alike != null) {
      SizeMm unit = alike.unit();
      for (int z = 0; z < size.heightMm(); z += unit.heightMm()) {
        for (int x = 0; x < size.lengthMm(); x += unit.lengthMm()) {
          for (int y = 0; y < size.widthMm(); y += unit.widthMm()) {
            PointMm at = new PointMm(corner.xMm() + x, corner.yMm() + y, corner.zMm() + z);
            stander.stand(kinds[0], alike.pose(), at);
          }
        }
      }
    }
  }

  private static PointMm beyond(PointMm corner, Join two) {
    SizeMm first = two.first().size;
    return switch (two.side()) {
      case BEHIND -> new PointMm(corner.xMm() + first.lengthMm(), corner.yMm(), corner.zMm());
      case BESIDE -> new PointMm(corner.xMm(), corner.yMm() + first.widthMm(), corner.zMm());
      case ON_TOP -> new PointMm(corner.xMm(), corner.yMm(), corner.zMm() + first.heightMm());
    };
  }

  /** The same number for blocks of one size with the same units, however they stand in it. */
  long likeness() {
    long key = Ground.mix(((long) size.lengthMm() << 32) ^ size.widthMm());
    key = Ground.mix(key ^ size.heightMm());
    for (int i = 0; i < kinds.length; i++) {
      key = Ground.mix(key ^ ((long) kinds[i] << 32) ^ counts[i]);
    }
    return key;
  }
}
