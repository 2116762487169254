package kitstow.planner.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitstow.planner.model.Body;
import kitstow.planner.model.FittedModule;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Slide;
import kitstow.planner.statics.LoadLine;

/** All that rides on a slide, its own moving part included unless its maker rates contents only. */
final class SlideRating implements LimitRule {
  @Override
  public RuleCard card() {
    return RuleCard.deratedRating(
        RuleId.SLIDE_RATING, "load on a slide within its rating, its own moving part included");
  }

  @Override
  public List<LoadLine> lines(Loading loading, LoadState state) {

    List<LoadLine> lines = new ArrayList<>();
    for (FittedModule fitted : loading.rig().modules().values()) {
      Optional<Slide> slide = fitted.module().slide();
      if (!slide.isPresent()) {
        continue;
      }
      String id = fitted.module().id();
      long limit = slide.get().ratings().inG(state.kind(), state.surface());
      String notCounted = slide.get().contentsOnly() ? id + Loading.MOVING : "";
      LoadLine.Builder line = LoadLine.of(RuleId.SLIDE_RATING, id, limit, /* denominator= */ 1L);
      for (int i = 0; i < state.size(); i++) {
        Body body = loading.bodies().get(i);
        if (body.movesWith().contains(id) && !body.key().equals(notCounted)) {
          line.add(i, 1L);
        }
      }
      lines.add(line.build());
    }
    return lines;
  }
}
