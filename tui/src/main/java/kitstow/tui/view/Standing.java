package kitstow.tui.view;

import kitstow.planner.geometry.SizeMm;
import kitstow.planner.geometry.Turn;
import kitstow.planner.model.PlacedItem;

/** How a thing stands, in words: which way up, and which way its longer side runs. */
public final class Standing {
  private Standing() {}

  public static String inWords(PlacedItem item) {
    Turn turn = item.placement().turn();
    SizeMm listed = item.item().shapes().get(item.placement().shape());
    return up(turn, listed) + ", " + along(item);
  }

  private static String up(Turn turn, SizeMm listed) {
    boolean cube = listed.lengthMm() == listed.widthMm() && listed.widthMm() == listed.heightMm();
    return switch (turn) {
      case LWH, WLH -> "upright";
      case LHW, HLW -> cube ? "upright" : "on its side";
      case WHL, HWL -> "on end";
    };
  }

  private static String along(PlacedItem item) {
    int alongMm = item.box().lengthMm();
    int acrossMm = item.box().widthMm();
    if (alongMm == acrossMm) {
      return "either way round";
    }
    return alongMm > acrossMm ? "long side along" : "long side across";
  }
}
