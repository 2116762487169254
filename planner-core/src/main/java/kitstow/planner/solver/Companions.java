package kitstow.planner.solver;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.IntPredicate;
import kitstow.planner.geometry.MeanReach;
import kitstow.planner.model.Item;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Space;
import kitstow.planner.model.Zone;

/**
 * Which units are worth taking out together: of one space, of one stretch along the vehicle, side
 * by side, of one kind, in the way of one that stays home, ahead of one that could stand there, or
 * of its size there.
 */
final class Companions {
  private static final int CONTESTANTS = 4;

  /** One time in so many all that stands ahead is in question, else what stands side by side. */
  private static final int SCATTERED = 3;

  /** Least and most room a thing takes against another for the two to be alike. */
  private static final double LEAST_ALIKE = 0.6;

  private static final double MOST_ALIKE = 1.8;

  private final Packing packing;
  private final Random random;
  private final List<Integer> aboard;

  /**
   * Companions in a packing.
   *
   * @param aboard units that have a place
   */
  Companions(Packing packing, Random random, List<Integer> aboard) {
    this.packing = packing;
    this.random = random;
    this.aboard = aboard;
  }

  /** Any unit. */
  int any() {
    return aboard.get(random.nextInt(aboard.size()));
  }

  /** Of a few units drawn that which would gain most by standing further forward. */
  int gainsMost() {
    int best = any();
    for (int i = 1; i < CONTESTANTS; i++) {
      int other = any();
      if (gain(other) > gain(best)) {
        best = other;
      }
    }
    return best;
  }

  /**
   * What the place of a unit costs beyond the front of the foremost space that takes it, by its
   * mass: mostly for its reach behind the rear axle, a little for its height.
   */
  private double gain(int unit) {
    Item item = place(unit).item();
    boolean pinned = packing.problem().isPinned(unit);
    return pinned ? 0.0 : item.mass().massG() * (costMm(unit) - leastReachMm(unit));
  }

  /** How far behind the rear axle the foremost space begins that may hold a unit. */
  private double leastReachMm(int unit) {
    RigView view = packing.view();
    for (int i = 0; i < view.siteCount(); i++) {
      int site = view.fromTheFront(i);
      if (view.decoder().mayHold(packing.problem().units().get(unit), site)) {
        return view.leastReachMm(site);
      }
    }
    return 0.0;
  }

  /** What the place of a unit costs. */
  private double costMm(int unit) {
    PlacedItem item = place(unit);
    return packing.view().decoder().cost(item.box(), item.space());
  }

  private PlacedItem place(int unit) {
    PlacedItem item = packing.placeOf(unit);
    if (item == null) {
      throw new IllegalStateException("unit without a place: " + unit);
    }
    return item;
  }

  /** All in the same space as a unit, itself as well. */
  List<Integer> ofSpace(int unit) {
    return of(other -> packing.siteOf(other) == packing.siteOf(unit));
  }

  private List<Integer> of(IntPredicate kind) {
    List<Integer> units = new ArrayList<>();
    for (int unit : aboard) {
      if (kind.test(unit)) {
        units.add(unit);
      }
    }
    return units;
  }

  /** All that stand beside, above or below a unit, anywhere across the vehicle. */
  List<Integer> ofStretch(int unit) {
    PlacedItem middle = place(unit);
    return of(
        other ->
            place(other).box().minXMm() < middle.box().maxXMm()
                && middle.box().minXMm() < place(other).box().maxXMm());
  }

  /** A unit and the next to it. */
  List<Integer> nearest(int unit, int most) {
    return nearest(unit, most, new ArrayList<>(aboard));
  }

  private List<Integer> nearest(int unit, int most, List<Integer> from) {
    PlacedItem middle = place(unit);
    from.sort(
        (a, b) -> {
          int byGap = Long.compare(gapMm(middle, place(a)), gapMm(middle, place(b)));
          int byItself = Boolean.compare(b == unit, a == unit);
          return byItself != 0 ? byItself : byGap != 0 ? byGap : Integer.compare(a, b);
        });
    return from.subList(0, Math.min(most, from.size()));
  }

  /** Distance between two things, axis by axis, summed. */
  private static long gapMm(PlacedItem a, PlacedItem b) {
    long x = Math.max(a.box().minXMm() - b.box().maxXMm(), b.box().minXMm() - a.box().maxXMm());
    long y = Math.max(a.box().minYMm() - b.box().maxYMm(), b.box().minYMm() - a.box().maxYMm());
    long z = Math.max(a.box().minZMm() - b.box().maxZMm(), b.box().minZMm() - a.box().maxZMm());
    return Math.max(0L, x) + Math.max(0L, y) + Math.max(0L, z);
  }

  /** Units of the same item, and of another one beside them. */
  List<Integer> ofKind(int unit) {
    PackingProblem problem = packing.problem();
    int kind = problem.kindOf(unit);
    int other = problem.kindOf(any());
    return of(one -> problem.kindOf(one) == kind || problem.kindOf(one) == other);
  }

  /** What stands in a space that could take a unit, and at times what loads the same limits. */
  List<Integer> inTheWayOf(int atHome) {
    int target = takerOf(atHome, Double.POSITIVE_INFINITY);
    if (target < 0) {
      return new ArrayList<>();
    }
    Space there = packing.view().sites().space(target);
    boolean onlyThere = random.nextBoolean();
    return of(
        unit ->
            packing.siteOf(unit) == target
                || (!onlyThere && sharesLimits(place(unit).space(), there)));
  }

  /** Whether what is in one space is likely to load what carries the other. */
  private static boolean sharesLimits(Space a, Space b) {
    return a.hostId().equals(b.hostId())
        || (a.zone() == b.zone() && a.zone() != Zone.CANOPY)
        || !Collections.disjoint(a.inModules(), b.inModules());
  }

  /**
   * What stands in better places than a unit, further forward or lower, in a space that could take
   * it there: any of it, or mostly some that stand side by side.
   */
  List<Integer> aheadOf(int unit, int most) {
    double costMm = costMm(unit);
    int target = takerOf(unit, costMm);
    List<Integer> ahead = of(other -> packing.siteOf(other) == target && costMm(other) < costMm);
    if (ahead.isEmpty() || random.nextInt(SCATTERED) == 0) {
      return ahead;
    }
    return nearest(ahead.get(random.nextInt(ahead.size())), most, ahead);
  }

  /** Lighter units of about the same room further forward, where a unit may stand too. */
  List<Integer> alikeAheadOf(int unit) {
    PlacedItem at = place(unit);
    double volumeMm3 = at.box().volumeMm3();
    return of(
        other -> {
          PlacedItem there = place(other);
          double share = there.box().volumeMm3() / volumeMm3;
          return share > LEAST_ALIKE
              && share < MOST_ALIKE
              && there.item().mass().massG() < at.item().mass().massG()
              && reachMm(there) < reachMm(at)
              && !packing.problem().isPinned(other)
              && packing
                  .view()
                  .decoder()
                  .mayHold(packing.problem().units().get(unit), packing.siteOf(other));
        });
  }

  /** How far behind the rear axle the mass of a thing acts. */
  private double reachMm(PlacedItem item) {
    int rearAxleXMm = packing.problem().scenario().ute().wheelbaseMm();
    double from = (double) item.box().minXMm() - rearAxleXMm;
    return MeanReach.behindMm(from, item.box().lengthMm());
  }

  /** A space that may hold a unit and begins at less than a cost, or -1. */
  private int takerOf(int unit, double lessThanMm) {
    RigView view = packing.view();
    List<Integer> takers = new ArrayList<>();
    for (int site = 0; site < view.siteCount(); site++) {
      if (view.leastReachMm(site) < lessThanMm
          && view.decoder().mayHold(packing.problem().units().get(unit), site)) {
        takers.add(site);
      }
    }
    return takers.isEmpty() ? -1 : takers.get(random.nextInt(takers.size()));
  }
}
