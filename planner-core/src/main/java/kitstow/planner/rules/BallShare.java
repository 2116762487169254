package kitstow.planner.rules;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.model.LoadKind;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Regimes;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Trailer;

/** Ball mass as a share of the trailer: too little sways, too much lifts the front axle. */
final class BallShare implements StateRule {
  @Override
  public RuleCard card() {
    return RuleCard.practice(
        RuleId.BALL_SHARE,
        "the ball carries a good share of the trailer, about 10 %",
        "ballShareLeastRatio 0.06, ballShareMostRatio 0.15",
        /* overridable= */ true);
  }

  @Override
  public List<StateCheck> checks(Situation situation, LoadState state) {
    List<StateCheck> checks = new ArrayList<>();
    if (state.kind() != LoadKind.MOVING) {
      return checks;
    }
    Regimes regimes = situation.settings().regimes();
    for (Trailer trailer : situation.loading().scenario().trailers()) {
      if (state.trailerId().filter(trailer.id()::equals).isPresent()) {
        double share = 100.0 * trailer.ball().massG() / trailer.total().massG();
        double least = regimes.ballShareLeastPermille() / 10.0;
        double most = regimes.ballShareMostPermille() / 10.0;
        boolean little = share - least < most - share;
        checks.add(
            new StateCheck(
                RuleId.BALL_SHARE,
                trailer.id(),
                "%",
                share,
                little ? least : most,
                little ? share - least : most - share));
      }
    }
    return checks;
  }
}
