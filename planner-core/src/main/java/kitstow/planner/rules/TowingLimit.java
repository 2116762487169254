package kitstow.planner.rules;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Trailer;
import kitstow.planner.model.UteLimits;
import kitstow.planner.statics.LoadLine;

/** Trailer within the braked or unbraked towing limit. */
final class TowingLimit implements LimitRule {
  @Override
  public RuleCard card() {
    return RuleCard.rating(
        RuleId.TOWING_LIMIT, "trailer within the braked or unbraked towing limit");
  }

  @Override
  public List<LoadLine> lines(Loading loading, LoadState state) {

    Optional<Trailer> trailer = Trailers.on(loading, state);
    UteLimits limits = loading.scenario().ute().limits();
    if (!trailer.isPresent()) {
      return List.of();
    }
    Trailer towed = trailer.get();
    OptionalLong limit = towed.braked() ? limits.brakedTowingG() : limits.unbrakedTowingG();
    if (!limit.isPresent()) {
      return List.of();
    }
    return List.of(
        LoadLine.of(RuleId.TOWING_LIMIT, towed.id(), limit.getAsLong(), /* denominator= */ 1L)
            .constant(towed.total().massG(), towed.total().toleranceG())
            .build());
  }
}
