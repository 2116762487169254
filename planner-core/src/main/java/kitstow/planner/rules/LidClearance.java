package kitstow.planner.rules;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.model.KeepClear;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.RuleId;
import kitstow.planner.packing.LidRoom;

/** Lids can be opened: on a slide where it is pulled out, elsewhere where the item stands. */
final class LidClearance implements PlanRule {
  @Override
  public RuleCard card() {
    return RuleCard.geometry(RuleId.LID_CLEARANCE, "lids can be opened", "");
  }

  @Override
  public List<Breach> breaches(Situation situation) {
    Loading loading = situation.loading();
    List<Breach> breaches = new ArrayList<>();
    for (PlacedItem item : loading.placed().values()) {
      int needed = 0;
      for (KeepClear keep : item.item().keepClear()) {
        if (keep.kind() == KeepClear.Kind.LID
            && !LidRoom.on(loading.rig(), loading.placed().values()).opens(item, keep)) {
          needed = Math.max(needed, keep.clearMm());
        }
      }
      if (needed > 0) {
        breaches.add(
            new Breach(
                RuleId.LID_CLEARANCE,
                List.of(item.key()),
                "",
                0.0,
                needed,
                "mm",
                Names.placed(loading, item) + " needs " + needed + " mm of free room",
                "lower it, move what is above it, or put it on a slide that brings the lid past the jamb"));
      }
    }
    return breaches;
  }
}
