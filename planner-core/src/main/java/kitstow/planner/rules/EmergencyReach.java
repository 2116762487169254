package kitstow.planner.rules;

import java.util.List;
import java.util.Set;
import kitstow.planner.model.Reach;
import kitstow.planner.model.RuleId;

/** Emergency gear comes out without moving anything else. */
final class EmergencyReach implements PlanRule {
  @Override
  public RuleCard card() {
    return RuleCard.practice(
        RuleId.EMERGENCY_REACH,
        "emergency gear comes out without moving anything else",
        "",
        /* overridable= */ true);
  }

  @Override
  public List<Breach> breaches(Situation situation) {
    return Buried.breaches(RuleId.EMERGENCY_REACH, Set.of(Reach.EMERGENCY), situation.loading());
  }
}
