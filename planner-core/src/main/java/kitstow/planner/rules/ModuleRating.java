package kitstow.planner.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitstow.planner.model.Body;
import kitstow.planner.model.BodyKind;
import kitstow.planner.model.FitOutModule;
import kitstow.planner.model.FittedModule;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Ratings;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Tank;
import kitstow.planner.statics.LoadLine;

/** What a module carries on its fixed part within its rating. */
final class ModuleRating implements LimitRule {
  @Override
  public RuleCard card() {
    return RuleCard.deratedRating(
        RuleId.MODULE_RATING, "what a module carries on its fixed part within its rating");
  }

  @Override
  public List<LoadLine> lines(Loading loading, LoadState state) {

    List<LoadLine> lines = new ArrayList<>();
    for (FittedModule fitted : loading.rig().modules().values()) {
      Optional<Ratings> rating = fitted.module().rating();
      if (!rating.isPresent()) {
        continue;
      }
      String id = fitted.module().id();
      LoadLine.Builder line =
          LoadLine.of(
              RuleId.MODULE_RATING,
              id,
              rating.get().inG(state.kind(), state.surface()),
              /* denominator= */ 1L);
      for (int i = 0; i < state.size(); i++) {
        Body body = loading.bodies().get(i);
        if (body.inModules().contains(id)
            && !body.movesWith().contains(id)
            && !ownPart(body, fitted.module())) {
          line.add(i, 1L);
        }
      }
      if (line.hasTerms()) {
        lines.add(line.build());
      }
    }
    return lines;
  }

  private static boolean ownPart(Body body, FitOutModule module) {
    if (body.kind() == BodyKind.MODULE) {
      return body.id().equals(module.id());
    }
    for (Tank tank : module.tanks()) {
      boolean tankPart = body.kind() == BodyKind.TANK || body.kind() == BodyKind.LIQUID;
      if (tankPart && body.id().equals(tank.id())) {
        return true;
      }
    }
    return false;
  }
}
