package kitstow.tui.view;

import java.util.List;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.model.Facing;
import kitstow.planner.model.Zone;

/**
 * One side of the load, left half or right half, both with the front at the left. A box belongs to
 * the side of its middle; one that has a third of its width on either side is drawn on both.
 */
public final class SideView {
  /** Share of its width a box must have on a side to be drawn there as well. */
  private static final int ONE_IN = 3;

  private SideView() {}

  /** Whether a box is drawn on a side. */
  public static boolean shows(Facing side, BoxMm box) {
    long left = Math.max(0L, -(long) Math.min(box.minYMm(), 0) + Math.min(box.maxYMm(), 0));
    long right = box.widthMm() - left;
    if (box.widthMm() == 0) {
      return side == Facing.LEFT ? box.minYMm() <= 0 : box.minYMm() >= 0;
    }
    long here = side == Facing.LEFT ? left : right;
    return 2L * here > box.widthMm() || ONE_IN * here >= box.widthMm();
  }

  /** Blocks of a side, as {@link LoadBlocks} takes them. */
  static List<Block> blocks(LoadBlocks load, Facing side) {
    return load.blocks(
        (key, box, solid) ->
            new Block(
                key,
                box.minXMm(),
                box.maxXMm(),
                box.minZMm(),
                box.maxZMm(),
                side == Facing.LEFT ? -box.minYMm() : box.maxYMm(),
                solid),
        box -> shows(side, box),
        SideView::everywhere);
  }

  private static boolean everywhere(Zone zone) {
    return switch (zone) {
      case CAB, CAB_ROOF, TRAY, UNDER_TRAY, CANOPY, CANOPY_ROOF, REAR_CARRIER -> true;
    };
  }
}
