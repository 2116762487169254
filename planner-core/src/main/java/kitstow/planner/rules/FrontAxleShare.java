package kitstow.planner.rules;

import java.util.List;
import kitstow.planner.model.LoadKind;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.RuleId;
import kitstow.planner.statics.AxleLoads;

/** Share of the total on the front axle, so that it still steers and brakes. */
final class FrontAxleShare implements StateRule {
  @Override
  public RuleCard card() {
    return RuleCard.practice(
        RuleId.FRONT_AXLE_SHARE,
        "enough of the total rests on the front axle",
        "frontShareSoloRatio 0.38, frontShareTowingRatio 0.33",
        /* overridable= */ true);
  }

  @Override
  public List<StateCheck> checks(Situation situation, LoadState state) {
    if (state.kind() != LoadKind.MOVING) {
      return List.of();
    }
    double share = AxleLoads.of(situation.loading(), state).frontShareRatio() * 100.0;
    boolean towing = state.trailerId().isPresent();
    double least =
        (towing
                ? situation.settings().frontShareTowingPermille()
                : situation.settings().frontShareSoloPermille())
            / 10.0;
    return List.of(
        new StateCheck(RuleId.FRONT_AXLE_SHARE, "front-axle", "%", share, least, share - least));
  }
}
