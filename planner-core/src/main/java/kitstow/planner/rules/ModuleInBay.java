package kitstow.planner.rules;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.geometry.Boxes;
import kitstow.planner.model.FittedModule;
import kitstow.planner.model.Loading;
import kitstow.planner.model.RuleId;

/** A module fits into its bay. */
final class ModuleInBay implements PlanRule {
  @Override
  public RuleCard card() {
    return RuleCard.geometry(RuleId.MODULE_IN_BAY, "a module fits into its bay", "");
  }

  @Override
  public List<Breach> breaches(Situation situation) {
    Loading loading = situation.loading();
    List<Breach> breaches = new ArrayList<>();
    for (FittedModule fitted : loading.rig().modules().values()) {
      int over = Boxes.protrusionMm(fitted.box(), fitted.bay().box());
      if (over > 0) {
        breaches.add(
            new Breach(
                RuleId.MODULE_IN_BAY,
                List.of(fitted.module().id(), fitted.bay().id()),
                "",
                over,
                0.0,
                "mm",
                fitted.module().title() + " is too large for bay " + fitted.bay().title(),
                "choose a bay that is at least " + over + " mm larger, or a smaller module"));
      }
    }
    return breaches;
  }
}
