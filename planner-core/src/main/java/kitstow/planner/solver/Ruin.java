package kitstow.planner.solver;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import kitstow.planner.model.Item;
import kitstow.planner.model.Need;

/**
 * Chooses the units that are taken out of a packing to be put back otherwise: of one space, of one
 * stretch along the vehicle, side by side, of one kind, at random, whatever is in the way of a unit
 * that stays home, what stands ahead of one that would rather be there, or one of about its size
 * there; or all of some spaces, which are then filled anew as a whole.
 */
final class Ruin {
  private static final int MOST = 12;

  /** The larger this exponent, the fewer units are mostly taken out. */
  private static final double FEWER = 3.0;

  /** The same while only what is aboard counts. */
  private static final double FEW = 2.0;

  private static final int ORDERS = 8;
  private static final int BY_MASS = 0;
  private static final int BY_VOLUME = 1;

  /** From here on dense units go before light ones: what fills little room takes the best of it. */
  private static final int BY_DENSITY = 4;

  /** How far an order by density strays at most. */
  private static final double MOST_NOISE = 0.5;

  private static final int WITHOUT_WISH = 6;
  private static final int WISHES = 3;
  private static final int WISHES_FOR_MUST = 10;

  /** How often, against the other ways, room is made further forward for something. */
  private static final int FORWARD = 8;

  /** How often one thing changes places with another of about its size that is further forward. */
  private static final int ALIKE = 1;

  /** How often whole spaces are filled anew. */
  private static final double REFILLED = 0.25;

  /** The same while something is home. */
  private static final double REFILLED_FOR_HOME = 0.5;

  /** How often that is one space only. */
  private static final double ONE_SPACE = 0.85;

  /** How often it is one or two. */
  private static final double UP_TO_TWO = 0.97;

  /** Else it is from two to one more than this. */
  private static final int MORE_SPACES = 4;

  /** Units of other spaces that may go along then, in half of the cases. */
  private static final int OTHERS = 6;

  /** How often what was hard to place of late is put back first. */
  private static final double TROUBLE_FIRST = 0.75;

  /** Chance that a unit at home that is not asked for is tried as well. */
  private static final double ALSO_TRIED = 0.3;

  private final Packing packing;
  private final Random random;
  private final List<Integer> aboard = new ArrayList<>();
  private final Companions companions;
  private final List<Integer> home = new ArrayList<>();
  private final List<Integer> out = new ArrayList<>();
  private int wanted = -1;
  private final List<Integer> refilled = new ArrayList<>();

  private Ruin(Packing packing, Random random) {
    this.packing = packing;
    this.random = random;
    for (int unit = 0; unit < packing.problem().units().size(); unit++) {
      (packing.placeOf(unit) == null ? home : aboard).add(unit);
    }
    this.companions = new Companions(packing, random, aboard);
  }

  /** Chooses at random. */
  static Ruin of(Packing packing, Random random) {
    Ruin ruin = new Ruin(packing, random);
    boolean fills = packing.problem().fillsSpaces() && !ruin.aboard.isEmpty();
    double share = ruin.home.isEmpty() ? REFILLED : REFILLED_FOR_HOME;
    if (fills && random.nextDouble() < share) {
      ruin.chooseSpaces();
    } else {
      ruin.choose();
    }
    return ruin;
  }

  /** The spaces that are to be filled anew, together, with what is taken out. */
  List<Integer> refilled() {
    return refilled;
  }

  /** Whether anything is home that may as well go in. */
  boolean leavesHome() {
    return !home.isEmpty();
  }

  /** Units to take out and put back, in the order in which they are to be put back. */
  List<Integer> inOrder() {
    Collections.shuffle(out, random);
    boolean fills = packing.problem().aim().fills();
    // While something is home what matters is that much goes in, not that it stands in front.
    int orders = home.isEmpty() ? ORDERS : BY_DENSITY;
    int order = fills && random.nextBoolean() ? BY_VOLUME : random.nextInt(orders);
    if (order == BY_MASS) {
      out.sort((a, b) -> Long.compare(item(b).mass().massG(), item(a).mass().massG()));
    } else if (order == BY_VOLUME) {
      out.sort((a, b) -> Long.compare(volumeMm3(b), volumeMm3(a)));
    } else if (order >= BY_DENSITY) {
      sortByDensity();
    }
    if (random.nextInt(4) > (fills ? 2 : 0)) {
      out.sort(Comparator.comparingInt(unit -> Construction.classOf(item(unit))));
    }
    if (random.nextDouble() < TROUBLE_FIRST) {
      sortByTrouble();
    }
    if (wanted >= 0) {
      out.remove(Integer.valueOf(wanted));
      out.add(0, wanted);
    }
    return out;
  }

  private void sortByDensity() {
    double noise = MOST_NOISE * random.nextDouble();
    Map<Integer, Double> density = new HashMap<>();
    for (int unit : out) {
      double gramsPerMm3 = item(unit).mass().massG() / (double) volumeMm3(unit);
      density.put(unit, gramsPerMm3 * (1.0 + noise * random.nextDouble()));
    }
    out.sort(Comparator.comparingDouble((Integer unit) -> -density.getOrDefault(unit, 0.0)));
  }

  /** What gave most trouble of late first, mostly; what gave none stays in its order. */
  private void sortByTrouble() {
    Map<Integer, Double> met = new HashMap<>();
    for (int unit : out) {
      met.put(unit, packing.problem().trouble().of(unit) * random.nextDouble());
    }
    out.sort(Comparator.comparingDouble((Integer unit) -> -met.getOrDefault(unit, 0.0)));
  }

  private Item item(int unit) {
    return packing.problem().units().get(unit).item();
  }

  private long volumeMm3(int unit) {
    return item(unit).shapes().get(0).volumeMm3();
  }

  /** All of some spaces but what is pinned, all that is home, at times a few of elsewhere. */
  private void chooseSpaces() {
    int spaces = spaces();
    for (int i = 0; i < spaces; i++) {
      int centre = centre();
      int site = packing.siteOf(centre);
      if (!refilled.contains(site)) {
        refilled.add(site);
        out.addAll(companions.ofSpace(centre));
      }
    }
    out.removeIf(packing.problem()::isPinned);
    out.addAll(home);
    int others = random.nextBoolean() ? random.nextInt(OTHERS) : 0;
    for (int i = 0; i < others; i++) {
      int other = centre();
      if (!out.contains(other) && !packing.problem().isPinned(other)) {
        out.add(other);
      }
    }
  }

  /** Mostly one, now and then two, seldom more. */
  private int spaces() {
    double draw = random.nextDouble();
    if (draw < ONE_SPACE) {
      return 1;
    }
    return draw < UP_TO_TWO ? 2 : 2 + random.nextInt(MORE_SPACES);
  }

  private void choose() {
    if (aboard.isEmpty()) {
      out.addAll(home);
      return;
    }
    int wishes = wishes();
    int kinds = WITHOUT_WISH + wishes + forward();
    int kind = random.nextInt(kinds + alike());
    int most = kind < kinds ? size() : 1;
    List<Integer> pool = new ArrayList<>(pool(kind, wishes, most));
    boolean wholeSpace =
        (kind == 1 || (isWish(kind, wishes) && kind % 2 == 0)) && pool.size() <= MOST;
    Collections.shuffle(pool, random);
    out.addAll(pool.subList(0, wholeSpace ? pool.size() : Math.min(most, pool.size())));
    if (kind >= 2 && kind <= 4 && random.nextInt(3) == 0) {
      int other = companions.any();
      if (!out.contains(other)) {
        out.add(other);
      }
    }
    for (int unit : home) {
      if (!out.contains(unit) && (isMust(unit) || random.nextDouble() < ALSO_TRIED)) {
        out.add(unit);
      }
    }
  }

  /** The units of which some are taken out; one that is wished for is taken out at once. */
  private List<Integer> pool(int kind, int wishes, int most) {
    if (isWish(kind, wishes)) {
      wish(mustFirst());
      return companions.inTheWayOf(wanted);
    }
    if (kind >= WITHOUT_WISH) {
      wish(companions.gainsMost());
      return kind < WITHOUT_WISH + wishes + FORWARD
          ? companions.aheadOf(wanted, most)
          : companions.alikeAheadOf(wanted);
    }
    int centre = centre();
    return switch (kind) {
      case 0, 1 -> companions.ofSpace(centre);
      case 2 -> companions.ofStretch(centre);
      case 3 -> companions.nearest(centre, most);
      case 4 -> companions.ofKind(centre);
      default -> aboard;
    };
  }

  private void wish(int unit) {
    wanted = unit;
    out.add(unit);
  }

  private static boolean isWish(int kind, int wishes) {
    return kind >= WITHOUT_WISH && kind < WITHOUT_WISH + wishes;
  }

  /** How often, of so many times, room is made for something at home. */
  private int wishes() {
    if (home.isEmpty()) {
      return 0;
    }
    return home.stream().anyMatch(this::isMust) ? WISHES_FOR_MUST : WISHES;
  }

  /** How often room is made further forward for something aboard, where the moment counts. */
  private int forward() {
    return packing.problem().aim().fills() ? 0 : FORWARD;
  }

  private int alike() {
    return packing.problem().aim().fills() ? 0 : ALIKE;
  }

  /** Half of the time any unit, else one that would gain by standing further forward. */
  private int centre() {
    return random.nextBoolean() ? companions.any() : companions.gainsMost();
  }

  /** Mostly few, and fewer still where the moment counts. */
  private int size() {
    double exponent = packing.problem().aim().fills() ? FEW : FEWER;
    return 2 + (int) (Math.pow(random.nextDouble(), exponent) * (MOST - 1));
  }

  /** One of the must-take units at home if there is any, else any of them. */
  private int mustFirst() {
    List<Integer> must = new ArrayList<>();
    for (int unit : home) {
      if (isMust(unit)) {
        must.add(unit);
      }
    }
    List<Integer> from = must.isEmpty() ? home : must;
    return from.get(random.nextInt(from.size()));
  }

  private boolean isMust(int unit) {
    return item(unit).need() == Need.MUST;
  }
}
