package kitstow.planner.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.Boxes;
import kitstow.planner.model.FittedModule;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Zone;

/** Gear and modules outside the canopy stay clear of its body. */
final class CanopyClash implements PlanRule {
  @Override
  public RuleCard card() {
    return RuleCard.geometry(
        RuleId.CANOPY_CLASH, "gear and modules outside the canopy stay clear of its body", "");
  }

  @Override
  public List<Breach> breaches(Situation situation) {
    Loading loading = situation.loading();
    List<Breach> breaches = new ArrayList<>();
    Optional<BoxMm> canopy = loading.scenario().canopyBody();
    if (!canopy.isPresent()) {
      return breaches;
    }
    for (FittedModule fitted : loading.rig().modules().values()) {
      if (fitted.bay().zone() != Zone.CANOPY) {
        add(
            breaches,
            fitted.module().id(),
            fitted.module().title(),
            Boxes.overlapDepthMm(fitted.box(), canopy.get()));
      }
    }
    for (PlacedItem item : loading.placed().values()) {
      if (item.space().zone() != Zone.CANOPY) {
        add(
            breaches,
            item.key(),
            Names.placed(loading, item),
            Boxes.overlapDepthMm(item.box(), canopy.get()));
      }
    }
    return breaches;
  }

  private static void add(List<Breach> breaches, String key, String title, int depthMm) {
    if (depthMm > 0) {
      breaches.add(
          new Breach(
              RuleId.CANOPY_CLASH,
              List.of(key),
              "",
              depthMm,
              0.0,
              "mm",
              title + " reaches " + depthMm + " mm into the canopy's body from outside",
              "move it, or set the canopy further back"));
    }
  }
}
