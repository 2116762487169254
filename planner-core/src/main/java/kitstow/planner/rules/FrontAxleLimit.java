package kitstow.planner.rules;

import java.util.List;
import java.util.OptionalLong;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.RuleId;
import kitstow.planner.statics.LoadLine;

/** Front axle load within its limit. */
final class FrontAxleLimit implements LimitRule {
  @Override
  public RuleCard card() {
    return RuleCard.rating(RuleId.FRONT_AXLE_LIMIT, "front axle load within its limit");
  }

  @Override
  public List<LoadLine> lines(Loading loading, LoadState state) {

    return AxleLines.front(
        RuleId.FRONT_AXLE_LIMIT,
        "front-axle",
        OptionalLong.of(loading.scenario().ute().limits().frontAxleG()),
        loading,
        state);
  }
}
