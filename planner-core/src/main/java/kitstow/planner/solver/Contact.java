package kitstow.planner.solver;

import java.util.List;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.model.PlacedItem;

/**
 * How closely a thing lies against others and against its space: what lies closely leaves few gaps.
 */
final class Contact {
  /** Faces that are no farther apart than this touch: nothing goes between them. */
  private static final int TOUCH_MM = 20;

  private Contact() {}

  /** The share of a thing's surface that touches its space or others in it, 0 to 1. */
  static double share(PlacedItem item, List<PlacedItem> others) {
    BoxMm box = item.box();
    long touching = withSpace(box, item.space().box());
    for (PlacedItem other : others) {
      touching += between(box, other.box());
    }
    long xy = (long) box.lengthMm() * box.widthMm();
    long xz = (long) box.lengthMm() * box.heightMm();
    long yz = (long) box.widthMm() * box.heightMm();
    return Math.min(1.0, touching / (2.0 * (xy + xz + yz)));
  }

  private static long withSpace(BoxMm box, BoxMm space) {
    int x = near(box.minXMm() - space.minXMm()) + near(space.maxXMm() - box.maxXMm());
    int y = near(box.minYMm() - space.minYMm()) + near(space.maxYMm() - box.maxYMm());
    int z = near(box.minZMm() - space.minZMm()) + near(space.maxZMm() - box.maxZMm());
    return (long) x * box.widthMm() * box.heightMm()
        + (long) y * box.lengthMm() * box.heightMm()
        + (long) z * box.lengthMm() * box.widthMm();
  }

  private static int near(int gapMm) {
    return gapMm <= TOUCH_MM ? 1 : 0;
  }

  /** Area in mm² over which two boxes face each other closely. */
  private static long between(BoxMm a, BoxMm b) {
    int x = Math.min(a.maxXMm(), b.maxXMm()) - Math.max(a.minXMm(), b.minXMm());
    int y = Math.min(a.maxYMm(), b.maxYMm()) - Math.max(a.minYMm(), b.minYMm());
    int z = Math.min(a.maxZMm(), b.maxZMm()) - Math.max(a.minZMm(), b.minZMm());
    if (x <= 0) {
      return y > 0 && z > 0 && -x <= TOUCH_MM ? (long) y * z : 0L;
    }
    if (y <= 0) {
      return z > 0 && -y <= TOUCH_MM ? (long) x * z : 0L;
    }
    return z <= 0 && -z <= TOUCH_MM ? (long) x * y : 0L;
  }
}
