package kitstow.planner.rules;

import java.util.List;
import java.util.Optional;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Trailer;
import kitstow.planner.model.UteLimits;
import kitstow.planner.statics.LoadLine;

/** Ball mass within its limit. */
final class BallLimit implements LimitRule {
  @Override
  public RuleCard card() {
    return RuleCard.rating(RuleId.BALL_LIMIT, "ball mass within its limit");
  }

  @Override
  public List<LoadLine> lines(Loading loading, LoadState state) {

    Optional<Trailer> trailer = Trailers.on(loading, state);
    UteLimits limits = loading.scenario().ute().limits();
    int ball = loading.indexOf(Loading.BALL);
    if (!trailer.isPresent() || !limits.ballG().isPresent() || ball < 0) {
      return List.of();
    }
    return List.of(
        LoadLine.of(
                RuleId.BALL_LIMIT,
                trailer.get().id(),
                limits.ballG().getAsLong(),
                /* denominator= */ 1L)
            .add(ball, 1L)
            .build());
  }
}
