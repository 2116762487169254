package kitstow.planner.rules;

import java.util.List;
import kitstow.planner.model.Mark;
import kitstow.planner.model.RuleId;

/** Fuel rides in the open or in a locker sealed from the box and vented outside. */
final class FuelOutside implements PlanRule {
  @Override
  public RuleCard card() {
    return new RuleCard(
        RuleId.FUEL_OUTSIDE,
        "fuel rides in the open or in a sealed locker vented outside",
        "state guidance on petrol containers [S100, S101]",
        SourceStatus.READ,
        "",
        /* overridable= */ true);
  }

  @Override
  public List<Breach> breaches(Situation situation) {
    return Outside.breaches(RuleId.FUEL_OUTSIDE, Mark.FUEL, situation.loading());
  }
}
