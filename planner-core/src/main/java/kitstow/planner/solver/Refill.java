package kitstow.planner.solver;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import kitstow.planner.model.Item;
import kitstow.planner.model.Need;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Space;
import kitstow.planner.model.SpacePointMm;
import kitstow.planner.packing.Filler;
import kitstow.planner.packing.Wanted;

/**
 * Fills one space anew with units that are nowhere, gap by gap instead of unit by unit: which unit
 * fits the gap is asked, not which gap fits the unit. The best of some fillings is carried out, as
 * far as the decoder and the limits let it be.
 */
final class Refill {
  /** What a millimetre ahead of the rear axle counts against one behind it. */
  private static final double AHEAD = 0.02;

  /** Reach behind the rear end of a space at which what is left is thought to stand, mm. */
  private static final double BEYOND_MM = 1000.0;

  /** What a litre that must come along counts against one that need not. */
  private static final double MUST = 1.0e6;

  private final Packing packing;
  private final PackingProblem problem;
  private final Random random;
  private final boolean roomy;

  /**
   * A space to fill.
   *
   * @param roomy whether the more goes in the better, whatever the moment
   */
  Refill(Packing packing, Random random, boolean roomy) {
    this.packing = packing;
    this.problem = packing.problem();
    this.random = random;
    this.roomy = roomy;
  }

  /**
   * Fills a space.
   *
   * @param units units that are nowhere
   * @param fillings how many are tried
   * @return units that have no place there
   */
  List<Integer> fill(int site, List<Integer> units, int fillings) {
    List<Integer> left = new ArrayList<>();
    Map<Integer, List<Integer>> byKind = new LinkedHashMap<>();
    for (int unit : units) {
      if (packing.view().decoder().mayHold(problem.units().get(unit), site)) {
        byKind.computeIfAbsent(problem.kindOf(unit), kind -> new ArrayList<>()).add(unit);
      } else {
        left.add(unit);
      }
    }
    if (byKind.isEmpty()) {
      return left;
    }
    List<List<Integer>> members = new ArrayList<>(byKind.values());
    List<Filler.Goods> goods = goods(site, members);
    LoadSums sums = packing.sums(units);
    int[] used = new int[goods.size()];
    for (Filler.Stand stand : best(site, goods, fillings)) {
      int unit = members.get(stand.goods()).get(used[stand.goods()]++);
      if (!put(unit, stand, site, sums)) {
        left.add(unit);
      }
    }
    for (int i = 0; i < used.length; i++) {
      left.addAll(members.get(i).subList(used[i], members.get(i).size()));
    }
    return left;
  }

  private List<Filler.Goods> goods(int site, List<List<Integer>> members) {
    List<Filler.Goods> goods = new ArrayList<>();
    for (List<Integer> like : members) {
      Wanted wanted = problem.units().get(like.get(0));
      List<Integer> poses = packing.view().decoder().posesIn(wanted, site);
      goods.add(new Filler.Goods(wanted, poses, like.size()));
    }
    return goods;
  }

  private List<Filler.Stand> best(int site, List<Filler.Goods> goods, int fillings) {
    Filler filler = packing.filler(site, goods);
    List<Filler.Stand> best = List.of();
    double least = Double.MAX_VALUE;
    for (int i = 0; i < fillings; i++) {
      Filler.Taste taste = roomy ? Filler.Taste.roomy(random) : Filler.Taste.any(random);
      List<Filler.Stand> stands = filler.fill(taste, random);
      double cost = cost(stands, goods, site);
      if (cost < least) {
        least = cost;
        best = stands;
      }
    }
    return best;
  }

  /** Puts a unit where the filling has it, unless a rule or a limit is against it. */
  private boolean put(int unit, Filler.Stand stand, int site, LoadSums sums) {
    Space space = packing.view().sites().space(site);
    SpacePointMm corner = space.cornerOf(stand.corner());
    long stance = Stance.at(stand.pose(), corner);
    PlacedItem found = packing.tryAt(unit, stance, site);
    if (found == null
        || !found.placement().corner().equals(corner)
        || sums.overWithG(unit, found, site) > sums.overG()) {
      return false;
    }
    packing.put(unit, stance, site, found);
    return true;
  }

  /** The lower the more is in, or the less of it acts behind the rear axle. */
  private double cost(List<Filler.Stand> stands, List<Filler.Goods> goods, int site) {
    Space space = packing.view().sites().space(site);
    double leftMm = reachMm(space.box().maxXMm()) + BEYOND_MM;
    double sum = 0.0;
    for (Filler.Stand stand : stands) {
      Wanted wanted = goods.get(stand.goods()).wanted();
      if (roomy) {
        sum -= worth(wanted.item());
      } else {
        int lengthMm = wanted.poses().get(stand.pose()).size().lengthMm();
        double here = reachMm(stand.corner().xMm() + lengthMm / 2.0);
        sum += wanted.item().mass().massG() * (here - leftMm);
      }
    }
    return sum;
  }

  private double reachMm(double xMm) {
    double behindMm = xMm - problem.scenario().ute().wheelbaseMm();
    return behindMm >= 0.0 ? behindMm : AHEAD * behindMm;
  }

  /** What it counts that a unit is in: its room, or its value where that is more. */
  private static double worth(Item item) {
    double litres = item.shapes().get(0).volumeMm3() / 1.0e6;
    return item.need() == Need.MUST ? MUST * litres : Math.max(litres, item.value());
  }
}
