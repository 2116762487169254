package kitstow.planner.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import kitstow.planner.geometry.BoxMm;
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
        int depth = Math.max(ridersIntoMm(loading, a, b), ridersIntoMm(loading, b, a));
        add(
            breaches,
            a.module().id(),
            b.module().id(),
            () -> a.module().title() + " and " + b.module().title(),
            nested ? depth : Math.max(depth, clashMm(a, b)));
      }
      FittedModule module = modules.get(i);
      List<PlacedItem> riders = riders(loading, module);
      for (PlacedItem item : loading.placed().values()) {
        add(
            breaches,
            module.module().id(),
            item.key(),
            () -> module.module().title() + " and " + Names.placed(loading, item),
            Math.max(clashMm(module, item), ridersIntoMm(riders, module, item)));
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

  /** How deep what rides on a slide reaches into another module on its way out. */
  private static int ridersIntoMm(Loading loading, FittedModule slide, FittedModule other) {
    String id = slide.module().id();
    String otherId = other.module().id();
    if (slide.inModules().contains(otherId) || other.movesWith().contains(id)) {
      return 0;
    }
    int depth = 0;
    for (PlacedItem rider : riders(loading, slide)) {
      if (!rider.space().inModules().contains(otherId)) {
        BoxMm way = SlideTravel.swept(rider.box(), slide);
        depth = Math.max(depth, Boxes.overlapDepthMm(way, other.box()));
      }
    }
    return depth;
  }

  /** How deep what rides on a slide reaches into gear that stays, on its way out. */
  private static int ridersIntoMm(List<PlacedItem> riders, FittedModule slide, PlacedItem other) {
    if (riders.isEmpty() || other.space().movesWith().contains(slide.module().id())) {
      return 0;
    }
    int depth = 0;
    for (PlacedItem rider : riders) {
      BoxMm way = SlideTravel.swept(rider.box(), slide);
      depth = Math.max(depth, Boxes.overlapDepthMm(way, other.box()));
    }
    return depth;
  }

  private static List<PlacedItem> riders(Loading loading, FittedModule slide) {
    List<PlacedItem> riders = new ArrayList<>();
    for (PlacedItem rider : loading.placed().values()) {
      if (rider.space().movesWith().contains(slide.module().id())) {
        riders.add(rider);
      }
    }
    return riders;
  }

  private static int clashMm(FittedModule module, PlacedItem item) {
    String id = module.module().id();
    boolean within = item.space().inModules().contains(id);
    boolean ridesAlong = item.space().movesWith().contains(id);
    int closed = within ? 0 : Boxes.overlapDepthMm(module.box(), item.box());
    int swept = ridesAlong ? 0 : Boxes.overlapDepthMm(SlideTravel.swept(module), item.box());
    return Math.max(closed, swept);
  }

  private static void add(
      List<Breach> breaches, String one, String other, Supplier<String> both, int depthMm) {
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
              both.get() + " are in each other's way",
              "move one of them by " + depthMm + " mm or more"));
    }
  }
}
