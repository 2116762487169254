package kitstow.planner.solver;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
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

/**
 * An assignment of gear to spaces while it changes. Units go down in the order of their ranks, each
 * in the best place its space has left; where that is, is remembered by {@link Finds}, so that a
 * change costs only what it changes.
 */
final class Packing {
  private final PackingProblem problem;
  private final @Nullable String[] space;
  private final int[] site;
  private final long[] stance;
  private final int[] rank;
  private final @Nullable PlacedItem[] placed;
  private final long[] foundKey;
  private final @Nullable PlacedItem[] found;
  private final @Nullable PlacedItem[] summed;
  private final int[] summedSite;
  private Map<String, String> wantedBays = Map.of();
  private PackingProblem.Seen seen;
  private Ground ground;
  private @Nullable LoadSums sums;
  private int highestRank;
  private boolean stale = true;

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
    this.summed = new PlacedItem[units];
    this.summedSite = new int[units];
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
    forgetSums();
    for (int i = 0; i < space.length; i++) {
      String id = space[i];
      site[i] = id == null ? -1 : seen.view().sites().indexOf(id);
    }
    stale = true;
  }

  private void forgetSums() {
    sums = null;
    Arrays.fill(summed, null);
  }

  /** Gives a unit a space (null: home), a stance and a rank. */
  void assign(int unit, @Nullable String spaceId, long stanceNow, int rankNow) {
    if (rank[unit] == rankNow
        && stance[unit] == stanceNow
        && Objects.equals(space[unit], spaceId)) {
      return;
    }
    if (!Objects.equals(space[unit], spaceId)) {
      space[unit] = spaceId;
      site[unit] = spaceId == null ? -1 : seen.view().sites().indexOf(spaceId);
    }
    stance[unit] = stanceNow;
    rank[unit] = rankNow;
    highestRank = Math.max(highestRank, rankNow);
    stale = true;
  }

  /** Takes over another assignment. */
  void follow(PlanningLoad load) {
    Map<String, String> bays = PackingScore.baysOf(load);
    if (!bays.equals(wantedBays)) {
      moduleBays(bays);
    }
    for (PlanningItem item : load.items()) {
      assign(item.index(), item.space(), item.stance(), item.rank());
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

  private void settle() {
    if (!stale) {
      return;
    }
    stale = false;
    int count = 0;
    long[] order = new long[space.length];
    for (int unit = 0; unit < space.length; unit++) {
      placed[unit] = null;
      if (site[unit] >= 0) {
        order[count++] = ((long) rank[unit] << 32) | unit;
      }
    }
    Arrays.sort(order, 0, count);
    ground.clear();
    for (int i = 0; i < count; i++) {
      int unit = (int) order[i];
      PlacedItem item = find(unit);
      placed[unit] = item;
      if (item != null) {
        ground.add(item, site[unit], problem.kindOf(unit));
      }
    }
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
    LoadSums now = sums;
    if (now != null) {
      now.add(unit, item, siteIndex);
      summed[unit] = item;
      summedSite[unit] = siteIndex;
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
  @SuppressWarnings("ReferenceEquality") // Finds keeps one object a place; a copy costs only time.
  LoadSums sums(List<Integer> expected) {
    settle();
    boolean[] aboard = new boolean[placed.length];
    for (int unit = 0; unit < placed.length; unit++) {
      aboard[unit] = placed[unit] != null;
    }
    for (int unit : expected) {
      aboard[unit] = true;
    }
    TripTable table = problem.table(seen, aboard);
    LoadSums now = sums;
    if (now == null || now.table() != table) {
      now = new LoadSums(table, problem.unavoidable());
      forgetSums();
      sums = now;
    }
    for (int unit = 0; unit < placed.length; unit++) {
      PlacedItem was = summed[unit];
      PlacedItem is = placed[unit];
      if (was != is) {
        if (was != null) {
          now.remove(unit, was, summedSite[unit]);
        }
        if (is != null) {
          now.add(unit, is, site[unit]);
        }
        summed[unit] = is;
        summedSite[unit] = site[unit];
      }
    }
    return now;
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
    double stepNm = problem.stepNm() / (aim == Aim.FINE ? Aim.FINE_STEPS : 1);
    ScoreLevels all =
        new ScoreLevels(
            seen.view().conflicts(),
            now.overG(),
            mustLeft,
            valueLeft,
            ScoreLevels.steps(now.momentHalfGMm(), stepNm),
            handling(now));
    return aim.fills() ? all.onlyAboard(problem.scenario().settings().massLimits()) : all;
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

  /** The plan as it stands, units in the order in which they go down. */
  LoadPlan plan(LoadPlan.Origin origin) {
    settle();
    List<Integer> order = new ArrayList<>();
    for (int unit = 0; unit < placed.length; unit++) {
      if (placed[unit] != null) {
        order.add(unit);
      }
    }
    order.sort(Comparator.comparingInt((Integer unit) -> rank[unit]).thenComparingInt(u -> u));
    List<Placement> placements = new ArrayList<>();
    for (int unit : order) {
      PlacedItem item = placed[unit];
      if (item != null) {
        placements.add(item.placement());
      }
    }
    return new LoadPlan(problem.scenario().id(), seen.view().moduleBays(), placements, origin);
  }
}
