package kitstow.planner.rules;

import java.util.List;
import kitstow.planner.model.LoadKind;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.RuleId;
import kitstow.planner.statics.LoadLine;

/** Total mass of the ute with all aboard and the ball mass, within GVM. */
final class GvmLimit implements LimitRule {
  @Override
  public RuleCard card() {
    return RuleCard.rating(RuleId.GVM_LIMIT, "total mass within the gross vehicle mass");
  }

  @Override
  public List<LoadLine> lines(Loading loading, LoadState state) {

    if (state.kind() == LoadKind.PARKED) {
      return List.of();
    }
    LoadLine.Builder line =
        LoadLine.of(
            RuleId.GVM_LIMIT,
            "ute",
            loading.scenario().ute().limits().gvmG(),
            /* denominator= */ 1L);
    for (int i = 0; i < state.size(); i++) {
      line.add(i, 1L);
    }
    return List.of(line.build());
  }
}
