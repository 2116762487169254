package kitstow.planner.rules;

import java.util.List;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Zone;
import kitstow.planner.statics.LoadLine;

/** All on the cab roof, rack included, within its moving, off-road or parked limit. */
final class CabRoofLimit implements LimitRule {
  @Override
  public RuleCard card() {
    return new RuleCard(
        RuleId.CAB_ROOF_LIMIT,
        "all on the cab roof, rack included, within its limit",
        "handbook; off-road share is common practice, no source",
        SourceStatus.COMMON_PRACTICE,
        "offRoadRoofRatio 0.667",
        false);
  }

  @Override
  public List<LoadLine> lines(Loading loading, LoadState state) {

    return Roofs.lines(
        RuleId.CAB_ROOF_LIMIT,
        "cab-roof",
        Zone.CAB_ROOF,
        loading.scenario().ute().limits().cabRoof(),
        loading,
        state);
  }
}
