package kitstow.planner.rules;

import java.util.List;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.RuleId;
import kitstow.planner.statics.LoadLine;
import kitstow.planner.statics.TyreLoadIndex;

/** Front axle load within the load index of its tyres. */
final class FrontTyreLimit implements LimitRule {
  @Override
  public RuleCard card() {
    return AxleLines.tyreCard(
        RuleId.FRONT_TYRE_LIMIT, "front axle load within what its tyres carry");
  }

  @Override
  public List<LoadLine> lines(Loading loading, LoadState state) {
    return AxleLines.front(
        RuleId.FRONT_TYRE_LIMIT,
        "front-tyres",
        TyreLoadIndex.capacityG(loading.scenario().ute().frontTyres()),
        loading,
        state);
  }
}
