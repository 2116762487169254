package kitstow.planner.rules;

import java.util.List;
import java.util.OptionalLong;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.RuleId;
import kitstow.planner.statics.LoadLine;

/** Rear axle load within its limit. */
final class RearAxleLimit implements LimitRule {
  @Override
  public RuleCard card() {
    return RuleCard.rating(RuleId.REAR_AXLE_LIMIT, "rear axle load within its limit");
  }

  @Override
  public List<LoadLine> lines(Loading loading, LoadState state) {

    return AxleLines.rear(
        RuleId.REAR_AXLE_LIMIT,
        "rear-axle",
        OptionalLong.of(loading.scenario().ute().limits().rearAxleG()),
        loading,
        state);
  }
}
