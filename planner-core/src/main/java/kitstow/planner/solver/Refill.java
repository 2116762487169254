package kitstow.planner.solver;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.SplittableRandom;
import kitstow.planner.model.Item;
import kitstow.planner.model.Need;
import kitstow.planner.model.Space;
import kitstow.planner.packing.Filler;
import kitstow.planner.packing.Filling;
import kitstow.planner.packing.Taste;
import kitstow.planner.packing.Wanted;

/**
 * Fills spaces anew with units that are nowhere, gap by gap instead of unit by unit: which unit
 * fits the gap is asked, not which gap fits the unit. The best of some fillings is carried out, as
 * far as the decoder and the limits let it be.
 */
final class Refill {
  /** What a millimetre ahead of the rear axle counts against one behind it. */
  private static final double AHEAD = 0.02;

  /** Reach behind the rear end of a space at which what is left is thought to stand, mm. */
  private static final double BEYOND_MM = 1000.0;

  /** Ways to fill spaces of which the best is taken. */
  private static final int FILLINGS = 10;

  /** Fillings side by side at most, where it looks ahead. */
  private static final int WIDEST = 16;

  /** Blocks tried in a gap then. */
  private static final int CHOICES = 8;

  /** With so many units it looks ahead half of the time. */
  private static final double HALF = 150.0;

  /** What it counts, in gram millimetres, that something that must come along has a place. */
  private static final double NEEDED = 1.0e10;

  /** What a litre that must come along counts against one that need not. */
  private static final double MUST = 1.0e6;

  private final Packing packing;
  private final PackingProblem problem;
  private final SplittableRandom random;
  private final boolean roomy;

  /**
   * Spaces to fill.
   *
   * @param roomy whether the more goes in the better, whatever the moment
   */
  Refill(Packing packing, Random random, boolean roomy) {
    this.packing = packing;
    this.problem = packing.problem();
    this.random = new SplittableRandom(random.nextLong());
    this.roomy = roomy;
  }

  /**
   * Fills spaces, always the foremost gap of all.
   *
   * @param units units that are nowhere
   * @param mayLook whether it may take its time and look ahead, the rather the more units there are
   * @return units that have no place there
   */
  List<Integer> fill(List<Integer> sites, List<Integer> units, boolean mayLook) {
    Map<Integer, List<Integer>> byKind = new LinkedHashMap<>();
    for (int unit : units) {
      byKind.computeIfAbsent(problem.kindOf(unit), kind -> new ArrayList<>()).add(unit);
    }
    List<Filler> fillers = new ArrayList<>();
    double leftMm = 0.0;
    for (int site : sites) {
      fillers.add(packing.filler(site, goods(site, byKind.values())));
      Space space = packing.view().sites().space(site);
      leftMm = Math.max(leftMm, reachMm(space.box().maxXMm()) + BEYOND_MM);
    }
    int[] counts = new int[problem.blocks().kinds()];
    byKind.forEach((kind, members) -> counts[kind] = members.size());
    List<Integer> left = new ArrayList<>();
    LoadSums sums = packing.sums(units);
    int[] used = new int[counts.length];
    double behindMm = leftMm;
    Wanted[] wanted = new Wanted[counts.length];
    byKind.forEach((kind, members) -> wanted[kind] = problem.units().get(members.get(0)));
    Filling filling =
        new Filling(fillers, counts, stand -> cost(stand, wanted[stand.kind()], behindMm), random);
    boolean foresight = mayLook && random.nextDouble() < units.size() / (units.size() + HALF);
    Filling.Result best =
        foresight ? filling.wide(taste(), width(), CHOICES) : luckiest(filling, FILLINGS);
    for (Filler.Stand stand : best.stands()) {
      int unit = of(byKind, stand).get(used[stand.kind()]++);
      if (!put(unit, stand, sums)) {
        left.add(unit);
      }
    }
    byKind.forEach((kind, members) -> left.addAll(members.subList(used[kind], members.size())));
    return left;
  }

  private static List<Integer> of(Map<Integer, List<Integer>> byKind, Filler.Stand stand) {
    List<Integer> members = byKind.get(stand.kind());
    if (members == null) {
      throw new IllegalStateException("a kind that is not there: " + stand.kind());
    }
    return members;
  }

  private List<Filler.Goods> goods(int site, Collection<List<Integer>> byKind) {
    List<Filler.Goods> goods = new ArrayList<>();
    for (List<Integer> like : byKind) {
      Wanted wanted = problem.units().get(like.get(0));
      if (packing.view().decoder().mayHold(wanted, site)) {
        List<Integer> poses = packing.view().decoder().posesIn(wanted, site);
        goods.add(new Filler.Goods(problem.kindOf(like.get(0)), wanted, poses, like.size()));
      }
    }
    return goods;
  }

  /** The best of some fillings. */
  private Filling.Result luckiest(Filling filling, int fillings) {
    Filling.Result best = filling.once(taste());
    for (int i = 1; i < fillings; i++) {
      Filling.Result one = filling.once(taste());
      best = one.costs() < best.costs() ? one : best;
    }
    return best;
  }

  private Taste taste() {
    return roomy ? Taste.roomy(random) : Taste.any(random);
  }

  /** Fillings side by side: the more the rarer, so that each width gets about as much time. */
  private int width() {
    int width = 1;
    while (width < WIDEST && random.nextBoolean()) {
      width *= 2;
    }
    return width;
  }

  /** Puts a unit where the filling has it, unless a rule or a limit is against it. */
  private boolean put(int unit, Filler.Stand stand, LoadSums sums) {
    Space space = packing.view().sites().space(stand.site());
    long stance = Stance.at(stand.pose(), space.cornerOf(stand.corner()));
    return packing.putAt(unit, stance, stand.site(), sums);
  }

  /** The lower the more is in, or the less of it acts behind the rear axle. */
  private double cost(Filler.Stand stand, Wanted wanted, double leftMm) {
    if (roomy) {
      return -worth(wanted.item());
    }
    int lengthMm = wanted.poses().get(stand.pose()).size().lengthMm();
    double here = reachMm(stand.corner().xMm() + lengthMm / 2.0);
    return wanted.item().mass().massG() * (here - leftMm)
        - (wanted.item().need() == Need.MUST ? NEEDED : 0.0);
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
