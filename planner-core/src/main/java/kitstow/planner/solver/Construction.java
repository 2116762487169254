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
import org.jspecify.annotations.Nullable;

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

  /** How often, while only what is aboard counts, a unit goes where it leaves the fewest gaps. */
  private static final double SNUG = 0.7;

  /** How far the free surface of a place may be misjudged. */
  private static final double FREE_NOISE = 0.3;

  /** Degrees of urgency that are told apart. */
  private static final int URGENT = 100;

  /** Even a place that costs nothing is thought dearer by a share of this. */
  private static final double WILD_MM = 200.0;

  /** What has no more spaces than this at most goes before all are filled. */
  private static final int MOST_FEW = 2;

  /** One filling in so many goes by room alone. */
  private static final int ROOMY = 4;

  private final PackingProblem problem;
  private final @Nullable FloorGuide guide;

  /** The trade's way: what is nearer to the rear axle is better for everything. */
  Construction(PackingProblem problem) {
    this(problem, null);
  }

  /**
   * Steered by the prices of a floor: dear room goes to what gains most by it.
   *
   * @param guide what places cost, or null
   */
  Construction(PackingProblem problem, @Nullable FloorGuide guide) {
    this.problem = problem;
    this.guide = guide;
  }

  /**
   * Packs everything into an empty packing.
   *
   * @param noise how far the order may stray, 0 for none; where it may, any kind of order is taken
   */
  void packAll(Packing packing, Random random, double noise) {
    FirstGo first = noise > 0.0 ? FirstGo.any(random) : FirstGo.BULKY;
    packAll(packing, random, noise, new int[problem.units().size()], first);
  }

  /**
   * Packs everything into an empty packing.
   *
   * @param urgency by unit; of what need not come the more urgent goes first
   */
  void packAll(Packing packing, Random random, double noise, int[] urgency) {
    packAll(packing, random, noise, urgency, FirstGo.BULKY);
  }

  /**
   * Fills all spaces of an empty packing at once from the front, once what is pinned and what has
   * little choice has its place; then gives a place to each unit that is left.
   *
   * @param noise how far the order of these may stray
   */
  void fillAll(Packing packing, Random random, double noise) {
    int[] urgency = new int[problem.units().size()];
    List<Integer> order = order(packing, random, noise, urgency, FirstGo.any(random));
    int few = random.nextInt(MOST_FEW + 1);
    List<Integer> first = new ArrayList<>();
    List<Integer> must = new ArrayList<>();
    List<Integer> others = new ArrayList<>();
    boolean apart = random.nextBoolean();
    for (int unit : order) {
      Wanted wanted = problem.units().get(unit);
      boolean isMust = wanted.item().need() == Need.MUST;
      if (problem.isPinned(unit) || (isMust && choice(packing, wanted) <= few)) {
        first.add(unit);
      } else {
        (isMust && apart ? must : others).add(unit);
      }
    }
    insert(packing, first, random, 0.0);
    List<Integer> sites = new ArrayList<>();
    for (int site = 0; site < packing.view().siteCount(); site++) {
      sites.add(site);
    }
    Refill refill = new Refill(packing, random, random.nextInt(ROOMY) == 0);
    others.addAll(refill.fill(sites, must, /* mayLook= */ false));
    refill.fill(sites, others, /* mayLook= */ false);
    order.removeIf(unit -> packing.placeOf(unit) != null);
    insert(packing, order, random, 0.0);
  }

  private void packAll(Packing packing, Random random, double noise, int[] urgency, FirstGo first) {
    insert(
        packing, order(packing, random, noise, urgency, first), random, noise > 0.0 ? BLINK : 0.0);
  }

  private List<Integer> order(
      Packing packing, Random random, double noise, int[] urgency, FirstGo first) {
    List<Integer> order = new ArrayList<>();
    double[] weight = new double[problem.units().size()];
    for (int i = 0; i < weight.length; i++) {
      order.add(i);
      weight[i] =
          first.weightOf(problem.units().get(i).item()) * (1.0 + noise * random.nextDouble());
    }
    order.sort(
        Comparator.comparingInt((Integer i) -> rankOf(problem.units().get(i).item(), urgency[i]))
            .thenComparingInt(i -> choice(packing, problem.units().get(i)))
            .thenComparing(Comparator.comparingDouble((Integer i) -> weight[i]).reversed()));
    return order;
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

  /** What goes first where neither need nor choice tells. */
  private enum FirstGo {
    /** Heavy and bulky: the trade's own order. */
    BULKY,
    DENSE,
    HEAVY,
    LARGE;

    private static final List<FirstGo> ALL = List.of(values());

    /** A kilogram counts as much as so many litres. */
    private static final double LITRES_A_KG = 2.0;

    static FirstGo any(Random random) {
      return ALL.get(random.nextInt(ALL.size()));
    }

    double weightOf(Item item) {
      double litres = item.shapes().get(0).volumeMm3() / 1.0e6;
      double kg = item.mass().massG() / 1000.0;
      return switch (this) {
        case BULKY -> kg + litres / LITRES_A_KG;
        case DENSE -> kg / litres;
        case HEAVY -> kg;
        case LARGE -> litres;
      };
    }
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
    insert(packing, order, random, blink, /* wild= */ 0.0, /* prospect= */ null);
  }

  /**
   * The same with every place thought dearer than it is by a random share, so that a unit may leave
   * its best space to one that needs it more.
   *
   * @param wild largest share, 0 for none
   * @param prospect what it can still come to, or null to try all whatever comes
   * @return whether all were tried; else it was given up as hopeless
   */
  boolean insert(
      Packing packing,
      List<Integer> order,
      Random random,
      double blink,
      double wild,
      @Nullable Prospect prospect) {
    LoadSums sums = packing.sums(order);
    boolean report = problem.scenario().settings().massLimits() == Settings.MassLimits.REPORT;
    Map<Integer, Long> stances = new HashMap<>();
    for (int i = 0; i < order.size(); i++) {
      int unit = order.get(i);
      Wanted wanted = problem.units().get(unit);
      boolean anyway = report && wanted.item().need() == Need.MUST;
      Spot spot = new Spot(unit, sums, anyway);
      if (blink > 0.0 && problem.aim().fills() && random.nextDouble() < SNUG) {
        snuggest(spot, packing, random, blink);
      } else {
        long stance =
            blink > 0.0
                ? stances.computeIfAbsent(problem.kindOf(unit), kind -> stance(wanted, random))
                : Stance.ANY;
        cheapest(spot, packing, stance, random, blink, wild);
      }
      boolean taken = spot.take(packing);
      if (prospect != null) {
        if (!taken) {
          prospect.lose(unit);
          sums = problem.varies(unit) ? packing.sums(order.subList(i + 1, order.size())) : sums;
        }
        if (prospect.isHopeless(sums)) {
          if (!taken) {
            problem.trouble().meet(unit);
          }
          return false;
        }
      }
    }
    return true;
  }

  private void cheapest(
      Spot spot, Packing packing, long stance, Random random, double blink, double wild) {
    RigView view = packing.view();
    Wanted wanted = problem.units().get(spot.unit);
    for (int i = 0; i < view.siteCount(); i++) {
      int site = view.fromTheFront(i);
      if (guide == null
          && wild == 0.0
          && !spot.wants(view.leastReachMm(site), /* evenIfAlike= */ true)) {
        break;
      }
      if (!view.decoder().mayHold(wanted, site) || (blink > 0.0 && random.nextDouble() < blink)) {
        continue;
      }
      PlacedItem found = packing.tryAt(spot.unit, stance, site);
      if (found != null) {
        double cost =
            guide == null
                ? view.decoder().cost(found.box(), found.space())
                : guide.costKgMm(found, site);
        cost += wild > 0.0 ? wild * random.nextDouble() * (cost + WILD_MM) : 0.0;
        spot.offer(found, stance, site, cost);
      }
    }
  }

  /** Of all spaces and turns those in which the unit has most of its surface against something. */
  private void snuggest(Spot spot, Packing packing, Random random, double blink) {
    RigView view = packing.view();
    Wanted wanted = problem.units().get(spot.unit);
    for (int site = 0; site < view.siteCount(); site++) {
      if (!view.decoder().mayHold(wanted, site) || random.nextDouble() < blink) {
        continue;
      }
      for (int pose = 0; pose < wanted.poses().size(); pose++) {
        long stance = Stance.preferring(pose);
        PlacedItem found = packing.tryAt(spot.unit, stance, site);
        if (found != null) {
          double free = 1.0 - Contact.share(found, packing.in(site));
          spot.offer(found, stance, site, free * (1.0 + FREE_NOISE * random.nextDouble()));
        }
      }
    }
  }

  /**
   * The best place for a unit so far: without more overload than before, and of those the cheapest.
   */
  private static final class Spot {
    private final int unit;
    private final LoadSums sums;
    private final boolean anyway;
    private final long over;
    private @Nullable PlacedItem place;
    private long stance;
    private int site = -1;
    private double cost = Double.MAX_VALUE;
    private long then;

    /**
     * No place as yet.
     *
     * @param anyway whether a place with more overload is better than none
     */
    Spot(int unit, LoadSums sums, boolean anyway) {
      this.unit = unit;
      this.sums = sums;
      this.anyway = anyway;
      this.over = sums.overG();
      this.then = anyway ? Long.MAX_VALUE : over;
    }

    /** Whether a place that costs so much may be better. */
    boolean wants(double costs, boolean evenIfAlike) {
      return then > over || costs < cost || (evenIfAlike && costs == cost);
    }

    void offer(PlacedItem found, long stanceThere, int atSite, double costs) {
      if (!wants(costs, /* evenIfAlike= */ false)) {
        return;
      }
      long overThen = sums.overWithG(unit, found, atSite);
      boolean better = overThen <= over ? then > over || costs < cost : anyway && overThen < then;
      if (better) {
        place = found;
        stance = stanceThere;
        site = atSite;
        cost = costs;
        then = Math.max(overThen, over);
      }
    }

    /** Puts it there, if there is a place. */
    boolean take(Packing packing) {
      PlacedItem found = place;
      if (found != null) {
        packing.put(unit, stance, site, found);
      }
      return found != null;
    }
  }

  /**
   * Mostly none in particular; now and then another one, or rather on top of others. Units of one
   * kind get the same, since they pack best in blocks.
   */
  private long stance(Wanted wanted, Random random) {
    int oneIn = problem.aim().fills() ? POSED_FILLING : POSED;
    long stance =
        random.nextInt(oneIn) == 0
            ? Stance.preferring(random.nextInt(wanted.poses().size()))
            : Stance.ANY;
    return random.nextInt(3) == 0 ? stance + Stance.STACKED : stance;
  }
}
