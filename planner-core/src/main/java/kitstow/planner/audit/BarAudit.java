package kitstow.planner.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.RoofBars;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Space;

/**
 * Load on each bar against its rating. Goes bar by bar along the influence line of the bar: what
 * part of an item it carries, by where the item's centre is.
 */
final class BarAudit {
  private BarAudit() {}

  static void judge(AuditCase audited, Findings findings) {
    for (List<AuditedItem> items : audited.spacefuls()) {
      Space space = items.get(0).space();
      if (space.bars().isPresent()) {
        for (RoofBars.Bar bar : space.bars().get().bars()) {
          judge(audited, space, space.bars().get(), bar, items, findings);
        }
      }
    }
  }

  private static void judge(
      AuditCase audited,
      Space space,
      RoofBars bars,
      RoofBars.Bar bar,
      List<AuditedItem> items,
      Findings findings) {
    double[] share = new double[items.size()];
    for (int i = 0; i < share.length; i++) {
      share[i] = share(bar, carriers(bars, space, items.get(i)), space, items.get(i));
    }
    for (LoadState state : audited.states()) {
      double loadG = 0.0;
      for (int i = 0; i < share.length; i++) {
        loadG += share[i] * state.massG(items.get(i).body());
      }
      findings.sharedLimit(
          RuleId.BAR_LIMIT,
          space.id() + ":" + bar.id(),
          state.id(),
          loadG,
          AuditCase.allowedG(bar.ratings(), state));
    }
  }

  /** Bars that can carry an item, from front to rear: with a floor all, else those beneath it. */
  private static List<RoofBars.Bar> carriers(RoofBars bars, Space space, AuditedItem item) {
    List<RoofBars.Bar> carriers = new ArrayList<>();
    for (RoofBars.Bar bar : bars.bars()) {
      int xMm = xMm(bar, space);
      if (bars.platformFloor() || item.block().x().holds(new Span(xMm, xMm))) {
        carriers.add(bar);
      }
    }
    carriers.sort(Comparator.comparingInt(RoofBars.Bar::fromFrontMm));
    return carriers;
  }

  /** Ordinate of the bar's influence line at the item's centre, 0 to 1. */
  private static double share(
      RoofBars.Bar bar, List<RoofBars.Bar> carriers, Space space, AuditedItem item) {
    int place = carriers.indexOf(bar);
    if (place < 0) {
      return 0.0;
    }
    long centre = item.block().x().doubledMiddleMm();
    long here = 2L * xMm(bar, space);
    boolean behind = centre >= here;
    int neighbourPlace = behind ? place + 1 : place - 1;
    if (neighbourPlace < 0 || neighbourPlace == carriers.size()) {
      return 1.0;
    }
    long there = 2L * xMm(carriers.get(neighbourPlace), space);
    // A centre right on the rear neighbour is that neighbour's; one right on the front neighbour
    // is not this bar's either, and the line gives it nothing.
    boolean between = behind ? centre < there : centre >= there;
    // share = distance of the centre from the other bar / spacing of the two: lever rule. [S28]
    return between ? (double) (centre - there) / (here - there) : 0.0;
  }

  private static int xMm(RoofBars.Bar bar, Space space) {
    return space.box().minXMm() + bar.fromFrontMm();
  }
}
