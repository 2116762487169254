package kitstow.planner.solver;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Need;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Placement;
import kitstow.planner.packing.Filler;
import kitstow.planner.packing.Ground;
import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.score.buildin.bendablelong.BendableLongScore;

/**
 * An assignment of gear to spaces while it changes. Units go down in the order of their ranks, each
 * in the best place its space has left; where that is, is remembered by {@link Finds}, so that a
 * change costs only what it changes.
 */
final class Packing {
  /** Sets of states whose sums are kept; a search goes to and fro between few. */
  private static final int MOST_SUMS = 4;

  private final PackingProblem problem;
  private final @Nullable String[] space;
  private final int[] site;
  private final long[] stance;
  private final int[] rank;
  private final @Nullable PlacedItem[] placed;
  private final long[] foundKey;
  private final @Nullable PlacedItem[] found;
  private Map<String, String> wantedBays = Map.of();
  private PackingProblem.Seen seen;
  private Ground ground;
  private final Deque<LoadSums> sums = new ArrayDeque<>();
  private int highestRank;
  private final BitSet stale = new BitSet();

  Packing(PackingProblem problem, Map<String, String> moduleBays) {
    this.problem = problem;
    int units = problem.units().size();
    this.space = new String[units];
    this.site = new int[units];
    this.stance = new long[units];
    this.rank = new int[units];
    this.placed = new PlacedItem[units];
    this.foundKey = new long[units];
    this.found = new PlacedItem[units];
    Arrays.fill(site, -1);
    for (int i = 0; i < units; i++) {
      rank[i] = i;
    }
    this.highestRank = units;
    this.seen = problem.rig(moduleBays);
    this.ground = new Ground(seen.view().sites());
    moduleBays(moduleBays);
  }

  /** Other bays: spaces come and go. */
  void moduleBays(Map<String, String> moduleBays) {
    wantedBays = moduleBays;
    seen = problem.rig(moduleBays);
    ground = new Ground(seen.view().sites());
    sums.clear();
    for (int i = 0; i < space.length; i++) {
      String id = space[i];
      site[i] = id == null ? -1 : seen.view().sites().indexOf(id);
    }
    Arrays.fill(placed, null);
    stale.clear();
    stale.set(0, seen.view().sites().size());
  }

  /** Gives a unit a space (null: home), a stance and a rank. */
  void assign(int unit, @Nullable String spaceId, long stanceNow, int rankNow) {
    if (rank[unit] == rankNow
        && stance[unit] == stanceNow
        && Objects.equals(space[unit], spaceId)) {
      return;
    }
    markStale(site[unit]);
    if (!Objects.equals(space[unit], spaceId)) {
      space[unit] = spaceId;
      site[unit] = spaceId == null ? -1 : seen.view().sites().indexOf(spaceId);
      markStale(site[unit]);
    }
    stance[unit] = stanceNow;
    rank[unit] = rankNow;
    highestRank = Math.max(highestRank, rankNow);
  }

  private void markStale(int siteIndex) {
    if (siteIndex >= 0) {
      stale.set(siteIndex);
    }
  }

  /** Takes over another assignment. */
  void follow(PlanningLoad load) {
    Map<String, String> bays = PackingScore.baysOf(load);
    if (!bays.equals(wantedBays)) {
      moduleBays(bays);
    }
    // Ranks of what was tried and given up are free again, else they would run out in time.
    highestRank = space.length;
    for (PlanningItem item : load.items()) {
      assign(item.index(), item.space(), item.stance(), item.rank());
      highestRank = Math.max(highestRank, item.rank());
    }
  }

  PackingProblem problem() {
    return problem;
  }

  RigView view() {
    return seen.view();
  }

  @Nullable String spaceOf(int unit) {
    return space[unit];
  }

  /** Index of the space a unit is given, -1 for none. */
  int siteOf(int unit) {
    return site[unit];
  }

  long stanceOf(int unit) {
    return stance[unit];
  }

  Map<String, String> wantedBays() {
    return wantedBays;
  }

  int rankOf(int unit) {
    return rank[unit];
  }

  /** Where a unit stands, or null while it has no place. */
  @Nullable PlacedItem placeOf(int unit) {
    settle();
    return placed[unit];
  }

  /** Puts down anew what stands in spaces that have changed, and in those linked to them. */
  private void settle() {
    if (stale.isEmpty()) {
      return;
    }
    BitSet anew = ground.withLinked(stale);
    if (!settle(anew)) {
      anew.set(0, seen.view().sites().size());
      settle(anew);
    }
    stale.clear();
  }

  /** Whether nothing put down in these spaces has to do with any other. */
  private boolean settle(BitSet anew) {
    int count = 0;
    long[] order = new long[space.length];
    for (int unit = 0; unit < space.length; unit++) {
      if (site[unit] < 0) {
        placed[unit] = null;
      } else if (anew.get(site[unit])) {
        placed[unit] = null;
        order[count++] = ((long) rank[unit] << 32) | unit;
      }
    }
    Arrays.sort(order, 0, count);
    ground.clear(anew);
    for (int i = 0; i < count; i++) {
      int unit = (int) order[i];
      PlacedItem item = find(unit);
      placed[unit] = item;
      if (item != null) {
        ground.add(item, site[unit], problem.kindOf(unit));
        if (ground.isLinkedBeyond(site[unit], anew)) {
          return false;
        }
      }
    }
    return true;
  }

  /** Where a unit stands in its space as it is; at once if that is as it was the last time. */
  private @Nullable PlacedItem find(int unit) {
    Finds finds = problem.finds();
    long key = finds.keyOf(view(), unit, stance[unit], site[unit], ground);
    if (key != foundKey[unit]) {
      found[unit] = finds.find(key, view(), unit, stance[unit], site[unit], ground);
      foundKey[unit] = key;
    }
    return found[unit];
  }

  /** Where a unit that is nowhere now would stand in a space after all others, or null. */
  @Nullable PlacedItem tryAt(int unit, long stanceThere, int siteIndex) {
    settle();
    Finds finds = problem.finds();
    long key = finds.keyOf(view(), unit, stanceThere, siteIndex, ground);
    return finds.find(key, view(), unit, stanceThere, siteIndex, ground);
  }

  /** Puts a unit that is nowhere now where {@link #tryAt} found room for it. */
  void put(int unit, long stanceThere, int siteIndex, PlacedItem item) {
    settle();
    space[unit] = item.space().id();
    site[unit] = siteIndex;
    stance[unit] = stanceThere;
    rank[unit] = ++highestRank;
    foundKey[unit] = problem.finds().keyOf(view(), unit, stanceThere, siteIndex, ground);
    found[unit] = item;
    placed[unit] = item;
    ground.add(item, siteIndex, problem.kindOf(unit));
    LoadSums now = sums.peekFirst();
    if (now != null) {
      now.add(unit, item, siteIndex);
    }
  }

  /**
   * Puts a unit that is nowhere at the very place that a stance names, unless it cannot stand there
   * or overloads something; tells whether it did.
   *
   * @param sums loads of what has a place now
   */
  boolean putAt(int unit, long stanceThere, int siteIndex, LoadSums sums) {
    PlacedItem item = tryAt(unit, stanceThere, siteIndex);
    if (item == null
        || !item.placement().corner().equals(Stance.cornerOf(stanceThere))
        || sums.overWithG(unit, item, siteIndex) > sums.overG()) {
      return false;
    }
    put(unit, stanceThere, siteIndex, item);
    return true;
  }

  /** Takes units out; they are nowhere then. */
  void takeOut(List<Integer> units) {
    for (int unit : units) {
      assign(unit, null, Stance.ANY, rank[unit]);
    }
  }

  /** Fills a space with goods beside what stands there now. */
  Filler filler(int siteIndex, List<Filler.Goods> goods) {
    settle();
    return new Filler(view().sites(), siteIndex, ground, goods, problem.blocks());
  }

  /** What stands in a space now. */
  List<PlacedItem> in(int siteIndex) {
    settle();
    return ground.in(siteIndex);
  }

  /** Items that have a place now. */
  List<PlacedItem> placed() {
    settle();
    List<PlacedItem> all = new ArrayList<>();
    for (PlacedItem item : placed) {
      if (item != null) {
        all.add(item);
      }
    }
    return all;
  }

  /**
   * Loads of what is aboard, in the states that it makes.
   *
   * @param expected units that count as aboard for what is used up when, though they may not be yet
   */
  LoadSums sums(List<Integer> expected) {
    settle();
    boolean[] aboard = new boolean[placed.length];
    for (int unit = 0; unit < placed.length; unit++) {
      aboard[unit] = placed[unit] != null;
    }
    for (int unit : expected) {
      aboard[unit] = true;
    }
    LoadSums now = sumsOver(problem.table(seen, aboard));
    now.follow(placed, site);
    return now;
  }

  /** Sums over some states, which come first from now on. */
  private LoadSums sumsOver(TripTable table) {
    LoadSums now = sums.peekFirst();
    if (now != null && now.table() == table) {
      return now;
    }
    for (LoadSums known : sums) {
      if (known.table() == table) {
        sums.remove(known);
        sums.addFirst(known);
        return known;
      }
    }
    LoadSums made = new LoadSums(table, placed.length, problem.unavoidable());
    if (sums.size() == MOST_SUMS) {
      sums.removeLast();
    }
    sums.addFirst(made);
    return made;
  }

  /** The score now, by its parts. */
  ScoreLevels levels() {
    return levels(Aim.ALL);
  }

  /** The same in terms of an aim, by its parts that count for it. */
  ScoreLevels levels(Aim aim) {
    LoadSums now = sums(List.of());
    long mustLeft = seen.view().mustModulesLeft();
    long valueLeft = seen.view().moduleValueLeft();
    for (int i = 0; i < placed.length; i++) {
      if (placed[i] == null) {
        mustLeft += problem.units().get(i).item().need() == Need.MUST ? 1L : 0L;
        valueLeft += problem.costAtHome(i, aim);
      }
    }
    ScoreLevels all =
        new ScoreLevels(
            seen.view().conflicts(),
            now.overG(),
            mustLeft,
            valueLeft,
            ScoreLevels.steps(now.momentHalfGMm(), problem.stepNm()),
            handling(now));
    return counted(all, aim);
  }

  /** Of some levels those that count for an aim. */
  private ScoreLevels counted(ScoreLevels all, Aim aim) {
    return aim.fills() ? all.onlyAboard(problem.scenario().settings().massLimits()) : all;
  }

  /** The score now in terms of an aim, as a search compares it. */
  BendableLongScore score(Aim aim) {
    return levels(aim).toScore(problem.scenario().settings().massLimits());
  }

  /**
   * The best score, in terms of the aim of the search, that this can still come to with so much
   * home and no less of a moment.
   */
  BendableLongScore bestScore(long mustLeft, long valueLeft, long halfGMm) {
    Aim aim = problem.aim();
    ScoreLevels best =
        new ScoreLevels(
            seen.view().conflicts(),
            /* overG= */ 0L,
            mustLeft,
            valueLeft,
            ScoreLevels.steps(halfGMm, problem.stepNm()),
            /* handling= */ 0L);
    return counted(best, aim).toScore(problem.scenario().settings().massLimits());
  }

  private long handling(LoadSums now) {
    long moves = 0L;
    for (int i = 0; i < seen.view().sites().size(); i++) {
      moves += problem.handling().of(view(), i, ground);
    }
    long sideKg = now.sideOverG(problem.scenario().settings().leftRightLimitG()) / 1000L;
    return Handling.MOVE * moves
        + Handling.SPREAD * spread()
        + Handling.SIDE_KG * sideKg
        + Handling.HEIGHT_MM * now.meanHeightMm();
  }

  /** Spaces beyond the first over which groups are spread. */
  private long spread() {
    long sum = 0L;
    for (int[] group : problem.groups()) {
      BitSet sites = new BitSet();
      for (int unit : group) {
        if (placed[unit] != null) {
          sites.set(site[unit]);
        }
      }
      sum += Math.max(0, sites.cardinality() - 1);
    }
    return sum;
  }

  /** Worst moving moment now. */
  long momentHalfGMm() {
    return sums(List.of()).momentHalfGMm();
  }

  /** Units that have a place, in the order in which they go down. */
  List<Integer> inOrder() {
    settle();
    List<Integer> order = new ArrayList<>();
    for (int unit = 0; unit < placed.length; unit++) {
      if (placed[unit] != null) {
        order.add(unit);
      }
    }
    order.sort(Comparator.comparingInt((Integer unit) -> rank[unit]).thenComparingInt(u -> u));
    return order;
  }

  /** The plan as it stands, units in the order in which they go down. */
  LoadPlan plan(LoadPlan.Origin origin) {
    List<Placement> placements = new ArrayList<>();
    for (int unit : inOrder()) {
      PlacedItem item = placed[unit];
      if (item != null) {
        placements.add(item.placement());
      }
    }
    return new LoadPlan(problem.scenario().id(), seen.view().moduleBays(), placements, origin);
  }
}
