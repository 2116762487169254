package kitstow.planner.rules;

import java.util.List;
import kitstow.planner.model.LoadKind;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.RuleId;
import kitstow.planner.statics.OverallSize;
import kitstow.planner.statics.RearOverhangLimit;

/**
 * How far ute, body and load reach behind the rear axle, where a scenario asks for a rule of it.
 */
final class RearOverhang implements StateRule {
  @Override
  public RuleCard card() {
    return new RuleCard(
        RuleId.REAR_OVERHANG,
        "ute, body and load reach no farther behind the rear axle than a regulation allows",
        "60 % of the wheelbase, a guide of the United Kingdom [S33]; the lesser of that and 3.7 m,"
            + " heavy vehicles in Australia [S30]",
        SourceStatus.READ,
        "rearOverhang none; sixtyPercent or australian",
        /* overridable= */ true);
  }

  @Override
  public List<StateCheck> checks(Situation situation, LoadState state) {
    if (state.kind() != LoadKind.MOVING) {
      return List.of();
    }
    Loading loading = situation.loading();
    int wheelbaseMm = loading.scenario().ute().wheelbaseMm();
    int limitMm =
        switch (situation.settings().regimes().rearOverhang()) {
          case NONE -> Integer.MAX_VALUE;
          case SIXTY_PERCENT -> RearOverhangLimit.sixtyPercentMm(wheelbaseMm);
          case AUSTRALIAN -> RearOverhangLimit.australianMm(wheelbaseMm);
        };
    if (limitMm == Integer.MAX_VALUE) {
      return List.of();
    }
    int rearMm = OverallSize.rearmostXMm(loading);
    double reachMm = Math.max(0, rearMm - wheelbaseMm);
    return List.of(
        new StateCheck(RuleId.REAR_OVERHANG, "ute", "mm", reachMm, limitMm, limitMm - reachMm));
  }
}
