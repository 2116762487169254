package kitstow.planner.rules;

import java.util.List;
import kitstow.planner.model.Mark;
import kitstow.planner.model.RuleId;

/** Gas rides in the open or in a locker sealed from the box and vented outside. */
final class GasOutside implements PlanRule {
  @Override
  public RuleCard card() {
    return new RuleCard(
        RuleId.GAS_OUTSIDE,
        "gas rides in the open or in a sealed locker vented outside",
        "AS/NZS 5601.2 as told by Energy Safe Victoria [S94]; state guidance [S97, S98]",
        SourceStatus.READ_SECOND_HAND,
        "",
        /* overridable= */ true);
  }

  @Override
  public List<Breach> breaches(Situation situation) {
    return Outside.breaches(RuleId.GAS_OUTSIDE, Mark.GAS, situation.loading());
  }
}
