package kitstow.planner.solver;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import kitstow.planner.model.Item;
import kitstow.planner.model.Need;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Settings;
import kitstow.planner.packing.Wanted;

/**
 * Packs as the trade does: what must come first, then heavy and bulky before light, each unit into
 * the space where the whole load stays best: within limits, little behind the rear axle.
 */
final class Construction {
  private static final double BLINK = 0.05;

  /** One unit in so many is tried in a pose other than the cheapest first. */
  private static final int POSED = 6;

  /** The same while only what is aboard counts: tight packings want poses of their own. */
  private static final int POSED_FILLING = 2;

  /** Degrees of urgency that are told apart. */
  private static final int URGENT = 100;

  /** Even a place that costs nothing is thought dearer by a share of this. */
  private static final double WILD_MM = 200.0;

  private final PackingProblem problem;

  Construction(PackingProblem problem) {
    this.problem = problem;
  }

  /**
   * Packs everything into an empty packing.
   *
   * @param noise how far the order may stray, 0 for none
   */
  void packAll(Packing packing, Random random, double noise) {
    packAll(packing, random, noise, new int[problem.units().size()]);
  }

  /**
   * Packs everything into an empty packing.
   *
   * @param urgency by unit; of what need not come the more urgent goes first
   */
  void packAll(Packing packing, Random random, double noise, int[] urgency) {
    List<Integer> order = new ArrayList<>();
    double[] weight = new double[problem.units().size()];
    for (int i = 0; i < weight.length; i++) {
      order.add(i);
      weight[i] = weightOf(problem.units().get(i).item()) * (1.0 + noise * random.nextDouble());
    }
    order.sort(
        Comparator.comparingInt((Integer i) -> rankOf(problem.units().get(i).item(), urgency[i]))
            .thenComparingInt(i -> choice(packing, problem.units().get(i)))
            .thenComparing(Comparator.comparingDouble((Integer i) -> weight[i]).reversed()));
    insert(packing, order, random, noise > 0.0 ? BLINK : 0.0);
  }

  /** Spaces that can hold a unit at all; what has little choice goes before what has much. */
  private static int choice(Packing packing, Wanted wanted) {
    int takers = 0;
    for (int i = 0; i < packing.view().siteCount(); i++) {
      takers += packing.view().decoder().mayHold(wanted, i) ? 1 : 0;
    }
    return takers;
  }

  /** Urgent things that need not come go right after those that must. */
  private static int rankOf(Item item, int urgency) {
    int byNeed = URGENT * classOf(item);
    return item.need() == Need.MUST || urgency == 0
        ? byNeed - Math.min(urgency, URGENT - 1)
        : 2 * URGENT - Math.min(urgency, URGENT - 1);
  }

  /** Pinned and must-take things first. */
  static int classOf(Item item) {
    if (item.pin().isPresent()) {
      return 0;
    }
    return switch (item.need()) {
      case MUST -> 1;
      case SHOULD -> 2;
      case NICE -> 3;
    };
  }

  /** Heavy and bulky first: kilograms and litres count alike. */
  private static double weightOf(Item item) {
    double litres = item.shapes().get(0).volumeMm3() / 1.0e6;
    return item.mass().massG() / 1000.0 + litres * 0.5;
  }

  /**
   * Gives each unit in turn the place in which its mass acts least far behind the rear axle without
   * more overload than before; a must-take unit of a rig whose limits are only reported goes where
   * it adds least overload if there is no such place.
   *
   * @param order units that are nowhere
   * @param blink chance that a place is overlooked
   */
  void insert(Packing packing, List<Integer> order, Random random, double blink) {
    insert(packing, order, random, blink, /* wild= */ 0.0);
  }

  /**
   * The same with every place thought dearer than it is by a random share, so that a unit may leave
   * its best space to one that needs it more.
   *
   * @param wild largest share, 0 for none
   */
  void insert(Packing packing, List<Integer> order, Random random, double blink, double wild) {
    RigView view = packing.view();
    LoadSums sums = packing.sums(order);
    long over = sums.overG();
    boolean report = problem.scenario().settings().massLimits() == Settings.MassLimits.REPORT;
    Map<Integer, Integer> poses = new HashMap<>();
    for (int unit : order) {
      Wanted wanted = problem.units().get(unit);
      int pose =
          blink > 0.0
              ? poses.computeIfAbsent(problem.kindOf(unit), kind -> poseChoice(wanted, random))
              : 0;
      boolean anyway = report && wanted.item().need() == Need.MUST;
      int best = -1;
      PlacedItem place = null;
      double bestCost = Double.MAX_VALUE;
      long bestOver = anyway ? Long.MAX_VALUE : over;
      for (int i = 0; i < view.siteCount(); i++) {
        int site = view.fromTheFront(i);
        if (wild == 0.0 && view.leastReachMm(site) > bestCost && bestOver <= over) {
          break;
        }
        if (!view.decoder().mayHold(wanted, site) || (blink > 0.0 && random.nextDouble() < blink)) {
          continue;
        }
        PlacedItem found = packing.tryAt(unit, pose, site);
        if (found == null) {
          continue;
        }
        double cost = view.decoder().cost(found.box(), found.space());
        cost += wild > 0.0 ? wild * random.nextDouble() * (cost + WILD_MM) : 0.0;
        if (cost >= bestCost && bestOver <= over) {
          continue;
        }
        long then = sums.overWithG(unit, found, site);
        boolean better =
            then <= over ? bestOver > over || cost < bestCost : anyway && then < bestOver;
        if (better) {
          best = site;
          place = found;
          bestCost = cost;
          bestOver = Math.max(then, over);
        }
      }
      if (place != null) {
        packing.put(unit, pose, best, place);
        over = sums.overG();
      }
    }
  }

  /**
   * Mostly none in particular; now and then another one, or rather on top of others. Units of one
   * kind get the same, since they pack best in blocks.
   */
  private int poseChoice(Wanted wanted, Random random) {
    int oneIn = problem.aim().fills() ? POSED_FILLING : POSED;
    int pose = random.nextInt(oneIn) == 0 ? 1 + random.nextInt(wanted.poses().size()) : 0;
    return random.nextInt(3) == 0 ? pose + PlanningItem.STACKED : pose;
  }
}
