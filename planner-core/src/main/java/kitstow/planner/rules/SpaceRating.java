package kitstow.planner.rules;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Space;
import kitstow.planner.statics.LoadLine;

/** Contents of a space within its rating. */
final class SpaceRating implements LimitRule {
  @Override
  public RuleCard card() {
    return RuleCard.deratedRating(RuleId.SPACE_RATING, "contents of a space within its rating");
  }

  @Override
  public List<LoadLine> lines(Loading loading, LoadState state) {

    List<LoadLine> lines = new ArrayList<>();
    for (Space space : loading.rig().spaces().values()) {
      if (!space.ratings().isPresent()) {
        continue;
      }
      long limit = space.ratings().get().inG(state.kind(), state.surface());
      LoadLine.Builder line =
          LoadLine.of(RuleId.SPACE_RATING, space.id(), limit, /* denominator= */ 1L);
      for (PlacedItem item : loading.in(space.id())) {
        line.add(loading.indexOf(item.key()), 1L);
      }
      if (line.hasTerms()) {
        lines.add(line.build());
      }
    }
    return lines;
  }
}
