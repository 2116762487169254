package kitstow.planner.rules;

import java.util.List;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.RuleId;
import kitstow.planner.statics.LoadLine;
import kitstow.planner.statics.TyreLoadIndex;

/** Rear axle load within the load index of its tyres. */
final class RearTyreLimit implements LimitRule {
  @Override
  public RuleCard card() {
    return AxleLines.tyreCard(RuleId.REAR_TYRE_LIMIT, "rear axle load within what its tyres carry");
  }

  @Override
  public List<LoadLine> lines(Loading loading, LoadState state) {
    return AxleLines.rear(
        RuleId.REAR_TYRE_LIMIT,
        "rear-tyres",
        TyreLoadIndex.capacityG(loading.scenario().ute().rearTyres()),
        loading,
        state);
  }
}
