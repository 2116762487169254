package kitstow.tui.view;

import java.util.List;
import java.util.function.Predicate;
import kitstow.planner.model.Zone;

/**
 * The load from above, the front at the left and so the right side at the top; once without what is
 * on the roofs and once with the roofs alone.
 */
public final class PlanView {
  private PlanView() {}

  /** Whether a zone is a roof. */
  public static boolean roof(Zone zone) {
    return switch (zone) {
      case CAB_ROOF, CANOPY_ROOF -> true;
      case CAB, TRAY, UNDER_TRAY, CANOPY, REAR_CARRIER -> false;
    };
  }

  /** Blocks of a view from above, as {@link LoadBlocks} takes them. */
  static List<Block> blocks(LoadBlocks load, Predicate<Zone> zones) {
    return load.blocks(
        (key, box, solid) ->
            new Block(
                key, box.minXMm(), box.maxXMm(), box.minYMm(), box.maxYMm(), box.maxZMm(), solid),
        box -> true,
        zones);
  }
}
