package kitstow.planner.rules;

import java.util.List;
import kitstow.planner.model.KeepClear;
import kitstow.planner.model.Loading;
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
    LidRoom lids = LidRoom.on(loading.rig(), loading.placed().values());
    return FreeRoom.breaches(
        RuleId.LID_CLEARANCE,
        KeepClear.Kind.LID,
        loading,
        lids::opens,
        "lower it, move what is above it, or put it on a slide that brings the lid past the jamb");
  }
}
