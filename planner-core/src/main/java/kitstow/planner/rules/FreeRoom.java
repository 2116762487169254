package kitstow.planner.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;
import kitstow.planner.model.KeepClear;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.RuleId;

/** Items that do not have the room before their faces that they need. */
final class FreeRoom {
  private FreeRoom() {}

  /**
   * Every item that lacks room, with the most it needs where it lacks it.
   *
   * @param kind what the room is for
   * @param kept whether an item has the room it needs before a face
   * @param mend what would put it right
   */
  static List<Breach> breaches(
      RuleId rule,
      KeepClear.Kind kind,
      Loading loading,
      BiPredicate<PlacedItem, KeepClear> kept,
      String mend) {
    List<Breach> breaches = new ArrayList<>();
    for (PlacedItem item : loading.placed().values()) {
      int needed = 0;
      for (KeepClear keep : item.item().keepClear()) {
        if (keep.kind() == kind && !kept.test(item, keep)) {
          needed = Math.max(needed, keep.clearMm());
        }
      }
      if (needed > 0) {
        breaches.add(
            new Breach(
                rule,
                List.of(item.key()),
                "",
                0.0,
                needed,
                "mm",
                Names.placed(loading, item) + " needs " + needed + " mm of free room",
                mend));
      }
    }
    return breaches;
  }
}
