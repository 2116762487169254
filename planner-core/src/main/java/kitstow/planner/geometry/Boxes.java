package kitstow.planner.geometry;

import java.util.ArrayList;
import java.util.List;

/** Overlap, containment and contact of boxes, exact in whole millimetres. */
public final class Boxes {
  private Boxes() {}

  /** Whether two boxes share volume; touching faces do not. */
  public static boolean overlap(BoxMm a, BoxMm b) {
    return overlapXMm(a, b) > 0 && overlapYMm(a, b) > 0 && overlapZMm(a, b) > 0;
  }

  /** Shared extent along x in millimetres; negative is a gap. */
  public static int overlapXMm(BoxMm a, BoxMm b) {
    return Math.min(a.maxXMm(), b.maxXMm()) - Math.max(a.minXMm(), b.minXMm());
  }

  /** Shared extent along y in millimetres; negative is a gap. */
  public static int overlapYMm(BoxMm a, BoxMm b) {
    return Math.min(a.maxYMm(), b.maxYMm()) - Math.max(a.minYMm(), b.minYMm());
  }

  /** Shared extent along z in millimetres; negative is a gap. */
  public static int overlapZMm(BoxMm a, BoxMm b) {
    return Math.min(a.maxZMm(), b.maxZMm()) - Math.max(a.minZMm(), b.minZMm());
  }

  /**
   * The smallest of the three shared extents: how deep two overlapping boxes reach into each other.
   */
  public static int overlapDepthMm(BoxMm a, BoxMm b) {
    return Math.min(overlapXMm(a, b), Math.min(overlapYMm(a, b), overlapZMm(a, b)));
  }

  /** Shared area of two footprints in square millimetres, 0 where they only touch. */
  public static long footprintOverlapMm2(BoxMm a, BoxMm b) {
    int x = overlapXMm(a, b);
    int y = overlapYMm(a, b);
    return x > 0 && y > 0 ? (long) x * y : 0L;
  }

  /** Area of a footprint in square millimetres. */
  public static long footprintMm2(BoxMm a) {
    return (long) a.lengthMm() * a.widthMm();
  }

  /** How far the inner box reaches beyond the outer one, 0 where it lies wholly inside. */
  public static int protrusionMm(BoxMm inner, BoxMm outer) {
    int x = Math.max(outer.minXMm() - inner.minXMm(), inner.maxXMm() - outer.maxXMm());
    int y = Math.max(outer.minYMm() - inner.minYMm(), inner.maxYMm() - outer.maxYMm());
    int z = Math.max(outer.minZMm() - inner.minZMm(), inner.maxZMm() - outer.maxZMm());
    return Math.max(0, Math.max(x, Math.max(y, z)));
  }

  /**
   * The largest boxes that are left of one beside and below another that overlaps it: in front,
   * behind, left, right, below. They may share volume.
   */
  public static List<BoxMm> besideAndBelow(BoxMm box, BoxMm taken) {
    int x0 = box.minXMm();
    int y0 = box.minYMm();
    int z0 = box.minZMm();
    int x1 = box.maxXMm();
    int y1 = box.maxYMm();
    int z1 = box.maxZMm();
    List<BoxMm> parts = new ArrayList<>();
    if (taken.minXMm() > x0) {
      parts.add(new BoxMm(x0, y0, z0, taken.minXMm(), y1, z1));
    }
    if (taken.maxXMm() < x1) {
      parts.add(new BoxMm(taken.maxXMm(), y0, z0, x1, y1, z1));
    }
    if (taken.minYMm() > y0) {
      parts.add(new BoxMm(x0, y0, z0, x1, taken.minYMm(), z1));
    }
    if (taken.maxYMm() < y1) {
      parts.add(new BoxMm(x0, taken.maxYMm(), z0, x1, y1, z1));
    }
    if (taken.minZMm() > z0) {
      parts.add(new BoxMm(x0, y0, z0, x1, y1, taken.minZMm()));
    }
    return parts;
  }

  /** The smallest box around both. */
  public static BoxMm union(BoxMm a, BoxMm b) {
    return new BoxMm(
        Math.min(a.minXMm(), b.minXMm()),
        Math.min(a.minYMm(), b.minYMm()),
        Math.min(a.minZMm(), b.minZMm()),
        Math.max(a.maxXMm(), b.maxXMm()),
        Math.max(a.maxYMm(), b.maxYMm()),
        Math.max(a.maxZMm(), b.maxZMm()));
  }
}
