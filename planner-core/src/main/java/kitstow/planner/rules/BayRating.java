package kitstow.planner.rules;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.model.Bay;
import kitstow.planner.model.FittedModule;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.RuleId;
import kitstow.planner.statics.LoadLine;

/** All that stands in a bay, module included, within the bay's rating: a drawer deck, a shelf. */
final class BayRating implements LimitRule {
  @Override
  public RuleCard card() {
    return RuleCard.deratedRating(
        RuleId.BAY_RATING, "all that stands in a bay within the bay's rating");
  }

  @Override
  public List<LoadLine> lines(Loading loading, LoadState state) {

    List<LoadLine> lines = new ArrayList<>();
    for (FittedModule fitted : loading.rig().modules().values()) {
      Bay bay = fitted.bay();
      if (!bay.ratings().isPresent()) {
        continue;
      }
      long limit = bay.ratings().get().inG(state.kind(), state.surface());
      LoadLine.Builder line =
          LoadLine.of(RuleId.BAY_RATING, bay.id(), limit, /* denominator= */ 1L);
      for (int i = 0; i < state.size(); i++) {
        if (loading.bodies().get(i).inModules().contains(fitted.module().id())) {
          line.add(i, 1L);
        }
      }
      lines.add(line.build());
    }
    return lines;
  }
}
