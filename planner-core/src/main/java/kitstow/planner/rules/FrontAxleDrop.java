package kitstow.planner.rules;

import java.util.List;
import kitstow.planner.model.LoadKind;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.RuleId;
import kitstow.planner.statics.AxleLoads;

/** Loss of front axle load against the kerb ute: full fuel, nobody aboard, standard parts on. */
final class FrontAxleDrop implements StateRule {
  @Override
  public RuleCard card() {
    return RuleCard.practice(
        RuleId.FRONT_AXLE_DROP,
        "the front axle keeps most of its kerb load",
        "frontDropRatio 0.10",
        /* overridable= */ true);
  }

  @Override
  public List<StateCheck> checks(Situation situation, LoadState state) {
    if (state.kind() != LoadKind.MOVING) {
      return List.of();
    }
    double kerbKg = situation.kerb().frontG() / 1000.0;
    double frontKg = AxleLoads.of(situation.loading(), state).frontKg();
    double drop = (kerbKg - frontKg) / kerbKg * 100.0;
    double limit = situation.settings().frontDropPermille() / 10.0;
    return List.of(
        new StateCheck(RuleId.FRONT_AXLE_DROP, "front-axle", "%", drop, limit, limit - drop));
  }
}
