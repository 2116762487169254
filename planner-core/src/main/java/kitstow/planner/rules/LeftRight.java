package kitstow.planner.rules;

import java.util.List;
import kitstow.planner.model.LoadKind;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.RuleId;
import kitstow.planner.statics.SideLoads;

/** Difference between the loads on the left and on the right wheels. */
final class LeftRight implements StateRule {
  @Override
  public RuleCard card() {
    return RuleCard.practice(
        RuleId.LEFT_RIGHT,
        "left and right wheels carry alike",
        "leftRightLimitKg 50",
        /* overridable= */ true);
  }

  @Override
  public List<StateCheck> checks(Situation situation, LoadState state) {
    if (state.kind() != LoadKind.MOVING) {
      return List.of();
    }
    double difference = Math.abs(SideLoads.of(situation.loading(), state).differenceKg());
    double limit = situation.settings().leftRightLimitG() / 1000.0;
    return List.of(
        new StateCheck(RuleId.LEFT_RIGHT, "ute", "kg", difference, limit, limit - difference));
  }
}
