package kitstow.planner.rules;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import kitstow.planner.model.Body;
import kitstow.planner.model.BodyKind;
import kitstow.planner.model.LoadKind;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Ratings;
import kitstow.planner.model.Rig;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Tray;
import kitstow.planner.model.Zone;
import kitstow.planner.statics.LoadLine;

/**
 * Canopy, modules and gear on, in and under the tray within the tray's rating. Accessories count
 * only where they belong to the canopy roof.
 */
final class TrayRating implements LimitRule {
  private static final Set<Zone> ON_TRAY =
      Set.of(Zone.TRAY, Zone.UNDER_TRAY, Zone.CANOPY, Zone.CANOPY_ROOF, Zone.REAR_CARRIER);

  @Override
  public RuleCard card() {
    return RuleCard.deratedRating(
        RuleId.TRAY_RATING, "canopy, modules and gear on, in and under the tray within its rating");
  }

  @Override
  public List<LoadLine> lines(Loading loading, LoadState state) {

    Optional<Ratings> rating = loading.scenario().tray().flatMap(Tray::rating);
    if (!rating.isPresent()) {
      return List.of();
    }
    LoadLine.Builder line =
        LoadLine.of(
            RuleId.TRAY_RATING,
            Rig.TRAY,
            rating.get().inG(state.kind(), state.surface()),
            /* denominator= */ 1L);
    for (int i = 0; i < state.size(); i++) {
      Body body = loading.bodies().get(i);
      if (body.kind() == BodyKind.CANOPY
          || (body.zone().isPresent() && ON_TRAY.contains(body.zone().get()))) {
        line.add(i, 1L);
      }
    }
    if (state.kind() == LoadKind.PARKED) {
      Roofs.addSleepers(line, Zone.CANOPY_ROOF, loading);
    }
    return line.hasTerms() ? List.of(line.build()) : List.of();
  }
}
