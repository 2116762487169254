package kitstow.planner.rules;

import java.util.List;
import kitstow.planner.model.Canopy;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Zone;
import kitstow.planner.statics.LoadLine;

/**
 * All on the canopy roof, rack included, within its own limit: a ledger apart from the cab roof.
 */
final class CanopyRoofLimit implements LimitRule {
  @Override
  public RuleCard card() {
    return new RuleCard(
        RuleId.CANOPY_ROOF_LIMIT,
        "all on the canopy roof, rack included, within its limit",
        "canopy maker; off-road share is common practice, no source",
        SourceStatus.COMMON_PRACTICE,
        "offRoadRoofRatio 0.667",
        false);
  }

  @Override
  public List<LoadLine> lines(Loading loading, LoadState state) {

    return Roofs.lines(
        RuleId.CANOPY_ROOF_LIMIT,
        "canopy-roof",
        Zone.CANOPY_ROOF,
        loading.scenario().canopy().flatMap(Canopy::roof),
        loading,
        state);
  }
}
