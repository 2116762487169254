package kitstow.planner.rules;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.geometry.Boxes;
import kitstow.planner.model.FittedModule;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.RuleId;
import kitstow.planner.packing.SlideTravel;

/** Module bodies and the room they sweep when pulled out stay clear of each other and of gear. */
final class ModuleClash implements PlanRule {
  @Override
  public RuleCard card() {
    return RuleCard.geometry(
        RuleId.MODULE_CLASH,
        "modules and what they sweep when pulled out stay clear of each other and of gear",
        "");
  }

  @Override
  public List<Breach> breaches(Situation situation) {
    Loading loading = situation.loading();
    List<Breach> breaches = new ArrayList<>();
    List<FittedModule> modules = new ArrayList<>(loading.rig().modules().values());
    for (int i = 0; i < modules.size(); i++) {
      for (int j = i + 1; j < modules.size(); j++) {
        FittedModule a = modules.get(i);
        FittedModule b = modules.get(j);
        boolean nested =
            a.inModules().contains(b.module().id()) || b.inModules().contains(a.module().id());
        if (!nested) {
          add(
              breaches,
              a.module().id(),
              b.module().id(),
              a.module().title() + " and " + b.module().title(),
              clashMm(a, b));
        }
      }
      for (PlacedItem item : loading.placed().values()) {
        FittedModule module = modules.get(i);
        add(
            breaches,
            module.module().id(),
            item.key(),
            module.module().title() + " and " + Names.placed(loading, item),
            clashMm(module, item));
      }
    }
    return breaches;
  }

  private static int clashMm(FittedModule a, FittedModule b) {
    int closed = Boxes.overlapDepthMm(a.box(), b.box());
    int aSweeps = Boxes.overlapDepthMm(SlideTravel.swept(a), b.box());
    int bSweeps = Boxes.overlapDepthMm(SlideTravel.swept(b), a.box());
    return Math.max(closed, Math.max(aSweeps, bSweeps));
  }

  private static int clashMm(FittedModule module, PlacedItem item) {
    String id = module.module().id();
    if (item.space().inModules().contains(id)) {
      return 0;
    }
    int closed = Boxes.overlapDepthMm(module.box(), item.box());
    int swept = Boxes.overlapDepthMm(SlideTravel.swept(module), item.box());
    return Math.max(closed, item.space().movesWith().contains(id) ? 0 : swept);
  }

  private static void add(
      List<Breach> breaches, String one, String other, String both, int depthMm) {
    if (depthMm > 0) {
      boolean inOrder = one.compareTo(other) <= 0;
      breaches.add(
          new Breach(
              RuleId.MODULE_CLASH,
              inOrder ? List.of(one, other) : List.of(other, one),
              "",
              depthMm,
              0.0,
              "mm",
              both + " are in each other's way",
              "move one of them by " + depthMm + " mm or more"));
    }
  }
}
