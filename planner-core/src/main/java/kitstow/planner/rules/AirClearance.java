package kitstow.planner.rules;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.model.KeepClear;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.RuleId;
import kitstow.planner.packing.AirRoom;

/** Air faces of an item stay free at all times, of walls too. */
final class AirClearance implements PlanRule {
  @Override
  public RuleCard card() {
    return RuleCard.geometry(RuleId.AIR_CLEARANCE, "air faces stay free", "");
  }

  @Override
  public List<Breach> breaches(Situation situation) {
    Loading loading = situation.loading();
    List<Breach> breaches = new ArrayList<>();
    for (PlacedItem item : loading.placed().values()) {
      int needed = 0;
      for (KeepClear keep : item.item().keepClear()) {
        if (keep.kind() == KeepClear.Kind.AIR
            && !AirRoom.kept(loading.rig(), loading.placed().values(), item, keep)) {
          needed = Math.max(needed, keep.clearMm());
        }
      }
      if (needed > 0) {
        breaches.add(
            new Breach(
                RuleId.AIR_CLEARANCE,
                List.of(item.key()),
                "",
                0.0,
                needed,
                "mm",
                Names.placed(loading, item) + " needs " + needed + " mm of free room",
                "leave the room before its air face free"));
      }
    }
    return breaches;
  }
}
