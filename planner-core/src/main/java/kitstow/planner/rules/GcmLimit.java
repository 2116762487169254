package kitstow.planner.rules;

import java.util.List;
import java.util.Optional;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Trailer;
import kitstow.planner.model.UteLimits;
import kitstow.planner.statics.LoadLine;

/**
 * Ute and trailer within GCM. What rests on the ball is part of the trailer, so it is counted there
 * and not as a body of the ute: its error is the trailer's.
 */
final class GcmLimit implements LimitRule {
  @Override
  public RuleCard card() {
    return RuleCard.rating(RuleId.GCM_LIMIT, "ute and trailer within the gross combination mass");
  }

  @Override
  public List<LoadLine> lines(Loading loading, LoadState state) {

    Optional<Trailer> trailer = Trailers.on(loading, state);
    UteLimits limits = loading.scenario().ute().limits();
    if (!trailer.isPresent() || !limits.gcmG().isPresent()) {
      return List.of();
    }
    Trailer towed = trailer.get();
    LoadLine.Builder line =
        LoadLine.of(RuleId.GCM_LIMIT, towed.id(), limits.gcmG().getAsLong(), /* denominator= */ 1L);
    int ball = loading.indexOf(Loading.BALL);
    for (int i = 0; i < state.size(); i++) {
      line.add(i, i == ball ? 0L : 1L);
    }
    return List.of(line.constant(towed.total().massG(), towed.total().toleranceG()).build());
  }
}
