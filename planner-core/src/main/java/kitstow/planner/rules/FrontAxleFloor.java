package kitstow.planner.rules;

import java.util.List;
import kitstow.planner.model.LoadKind;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.RuleId;
import kitstow.planner.statics.AxleLoads;

/**
 * Least share of the total on the front axle by a regulation, where a scenario asks for it. The
 * European text asks for 20 % on a vehicle at its largest mass with its rear axle at its limit and
 * the largest coupling mass on; here it is held against every moving state.
 */
final class FrontAxleFloor implements StateRule {
  @Override
  public RuleCard card() {
    return new RuleCard(
        RuleId.FRONT_AXLE_FLOOR,
        "the front axle carries the share that a regulation asks for",
        "1230/2012 Annex I, extract without the category: 20 % fully laden and coupled [S34]",
        SourceStatus.READ_SECOND_HAND,
        "frontFloorRatio 0, none; 0.2 for the European text",
        /* overridable= */ true);
  }

  @Override
  public List<StateCheck> checks(Situation situation, LoadState state) {
    int floorPermille = situation.settings().regimes().frontFloorPermille();
    if (state.kind() != LoadKind.MOVING || floorPermille == 0) {
      return List.of();
    }
    double share = AxleLoads.of(situation.loading(), state).frontShareRatio() * 100.0;
    double least = floorPermille / 10.0;
    return List.of(
        new StateCheck(RuleId.FRONT_AXLE_FLOOR, "front-axle", "%", share, least, share - least));
  }
}
