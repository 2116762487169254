package kitstow.planner.rules;

import java.util.List;
import kitstow.planner.model.KeepClear;
import kitstow.planner.model.Loading;
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
    return FreeRoom.breaches(
        RuleId.AIR_CLEARANCE,
        KeepClear.Kind.AIR,
        loading,
        (item, keep) -> AirRoom.kept(loading.rig(), loading.placed().values(), item, keep),
        "leave the room before its air face free");
  }
}
