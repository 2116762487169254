package kitstow.planner.solver;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Need;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Placement;
import kitstow.planner.model.Reach;
import kitstow.planner.model.Space;
import kitstow.planner.packing.Decoder;
import kitstow.planner.packing.Wanted;
import kitstow.planner.packing.WayOut;
import org.jspecify.annotations.Nullable;

/**
 * An assignment of gear to spaces while it changes: keeps each group of spaces decoded and decodes
 * again only the groups that were touched. Two decodes of every group are kept, since a search
 * undoes most of its moves.
 */
final class Packing {
  private static final int MOST_TABLES = 256;

  private final PackingProblem problem;
  private final @Nullable String[] space;
  private final int[] pose;
  private final int[] rank;
  private Map<String, String> wantedBays;
  private PackingProblem.Seen seen;
  private Slot[] slots;
  private boolean[] touched;
  private final Map<String, StateTable> tables = new HashMap<>();

  /** The last two decodes of one group of spaces. */
  private static final class Slot {
    private final Decoder.Decoded[] decoded = {Decoder.Decoded.NOTHING, Decoder.Decoded.NOTHING};
    private final long[][] inputs = {null, null};
    private int now;
  }

  Packing(PackingProblem problem, Map<String, String> moduleBays) {
    this.problem = problem;
    int units = problem.units().size();
    this.space = new String[units];
    this.pose = new int[units];
    this.rank = new int[units];
    for (int i = 0; i < units; i++) {
      rank[i] = i;
    }
    this.wantedBays = moduleBays;
    this.seen = problem.rig(moduleBays);
    this.slots = new Slot[0];
    this.touched = new boolean[0];
    moduleBays(moduleBays);
  }

  /** Other bays: everything is decoded afresh. */
  void moduleBays(Map<String, String> moduleBays) {
    wantedBays = moduleBays;
    seen = problem.rig(moduleBays);
    int clusters = seen.view().clusters().size();
    slots = new Slot[clusters];
    for (int i = 0; i < clusters; i++) {
      slots[i] = new Slot();
    }
    touched = new boolean[clusters];
    Arrays.fill(touched, true);
    tables.clear();
  }

  /** Gives a unit a space (null: home), a pose and a rank. */
  void assign(int unit, @Nullable String spaceId, int poseChoice, int rankNow) {
    if (Objects.equals(space[unit], spaceId) && pose[unit] == poseChoice && rank[unit] == rankNow) {
      return;
    }
    touch(space[unit]);
    space[unit] = spaceId;
    pose[unit] = poseChoice;
    rank[unit] = rankNow;
    touch(spaceId);
  }

  /** Takes over another assignment; what is alike stays decoded. */
  void follow(PlanningLoad load) {
    Map<String, String> bays = PackingScore.baysOf(load);
    if (!bays.equals(wantedBays)) {
      moduleBays(bays);
    }
    for (PlanningItem item : load.items()) {
      assign(item.index(), item.space(), item.pose(), item.rank());
    }
  }

  private void touch(@Nullable String spaceId) {
    int cluster = spaceId == null ? -1 : seen.view().clusterOf(spaceId);
    if (cluster >= 0) {
      touched[cluster] = true;
    }
  }

  PackingProblem problem() {
    return problem;
  }

  @Nullable String spaceOf(int unit) {
    return space[unit];
  }

  int rankOf(int unit) {
    return rank[unit];
  }

  /**
   * How far behind the rear axle a unit's mass acts where it is now, and a little for height and
   * place ahead of it; huge when it has no place.
   */
  double reachMm(int unit) {
    String key = problem.units().get(unit).key();
    String id = space[unit];
    int cluster = id == null ? -1 : seen.view().clusterOf(id);
    decodeTouched();
    if (cluster >= 0) {
      Slot slot = slots[cluster];
      for (PlacedItem item : slot.decoded[slot.now].placed()) {
        if (item.key().equals(key)) {
          return seen.view().decoder().cost(item.box(), item.space());
        }
      }
    }
    return Double.MAX_VALUE;
  }

  /** Grams over mass limits now, less what is over with all gear home. */
  long overG() {
    List<PlacedItem> placed = placed();
    long over = table(placed).worstOf(placed, new BarLoads()).overG();
    return Math.max(0L, over - problem.overWithoutGearG());
  }

  RigView view() {
    return seen.view();
  }

  private void decodeTouched() {
    Map<String, List<Integer>> bySpace = new HashMap<>();
    for (int i = 0; i < space.length; i++) {
      String id = space[i];
      if (id != null) {
        int cluster = seen.view().clusterOf(id);
        if (cluster >= 0 && touched[cluster]) {
          bySpace.computeIfAbsent(id, key -> new ArrayList<>()).add(i);
        }
      }
    }
    for (int c = 0; c < touched.length; c++) {
      if (touched[c]) {
        decode(c, bySpace);
        touched[c] = false;
      }
    }
  }

  private void decode(int cluster, Map<String, List<Integer>> bySpace) {
    List<Space> spaces = seen.view().clusters().get(cluster);
    Map<String, List<Wanted>> wanted = new LinkedHashMap<>();
    List<Long> input = new ArrayList<>();
    for (Space one : spaces) {
      List<Integer> units = bySpace.getOrDefault(one.id(), new ArrayList<>());
      units.sort(Comparator.comparingInt((Integer i) -> rank[i]).thenComparingInt(i -> i));
      List<Wanted> order = new ArrayList<>();
      for (int i : units) {
        order.add(problem.units().get(i).preferring(pose[i] - 1));
        input.add(((long) i << 32) | pose[i]);
      }
      wanted.put(one.id(), order);
      input.add(-1L);
    }
    long[] key = new long[input.size()];
    for (int i = 0; i < key.length; i++) {
      key[i] = input.get(i);
    }
    Slot slot = slots[cluster];
    for (int i = 0; i < 2; i++) {
      if (Arrays.equals(slot.inputs[i], key)) {
        slot.now = i;
        return;
      }
    }
    int older = 1 - slot.now;
    slot.decoded[older] = seen.view().decoder().decode(spaces, wanted, slot.decoded[slot.now]);
    slot.inputs[older] = key;
    slot.now = older;
  }

  /** Items that have a place now. */
  List<PlacedItem> placed() {
    decodeTouched();
    List<PlacedItem> placed = new ArrayList<>();
    for (Slot slot : slots) {
      placed.addAll(slot.decoded[slot.now].placed());
    }
    return placed;
  }

  /** The score now, by its parts. */
  ScoreLevels levels() {
    List<PlacedItem> placed = placed();
    boolean[] there = new boolean[space.length];
    for (PlacedItem item : placed) {
      there[problem.indexOf(item.key())] = true;
    }
    java.util.Set<String> fitted = seen.view().rig().modules().keySet();
    long mustLeft = ScoreLevels.mustModulesLeft(problem.scenario().modules(), fitted);
    long valueLeft = ScoreLevels.moduleValueLeft(problem.scenario().modules(), fitted);
    for (int i = 0; i < there.length; i++) {
      if (!there[i]) {
        mustLeft += problem.units().get(i).item().need() == Need.MUST ? 1L : 0L;
        valueLeft += ScoreLevels.valueOf(problem.units().get(i).item());
      }
    }
    StateTable.Worst worst = table(placed).worstOf(placed, new BarLoads());
    return new ScoreLevels(
        seen.view().conflicts(),
        Math.max(0L, worst.overG() - problem.overWithoutGearG()),
        mustLeft,
        valueLeft,
        ScoreLevels.steps(worst.momentHalfGMm(), problem.stepNm()),
        handling(placed));
  }

  /** Worst moving moment now. */
  long momentHalfGMm() {
    List<PlacedItem> placed = placed();
    return table(placed).worstOf(placed, new BarLoads()).momentHalfGMm();
  }

  private StateTable table(List<PlacedItem> placed) {
    StringBuilder key = new StringBuilder();
    List<PlacedItem> sorted = new ArrayList<>();
    for (PlacedItem item : placed) {
      if (StateTable.varies(item)) {
        sorted.add(item);
      }
    }
    sorted.sort(Comparator.comparing(PlacedItem::key));
    for (PlacedItem item : sorted) {
      key.append(item.key()).append('@').append(item.space().id()).append(' ');
    }
    StateTable known = tables.get(key.toString());
    if (known == null) {
      if (tables.size() >= MOST_TABLES) {
        tables.clear();
      }
      List<Placement> placements = new ArrayList<>();
      for (PlacedItem item : sorted) {
        placements.add(item.placement());
      }
      known =
          new StateTable(
              Loading.of(
                  problem.scenario(),
                  new LoadPlan(
                      problem.scenario().id(),
                      seen.view().moduleBays(),
                      placements,
                      LoadPlan.Origin.HAND)),
              seen.shape());
      tables.put(key.toString(), known);
    }
    return known;
  }

  /** Things to move before daily gear comes out. */
  static long handling(List<PlacedItem> placed) {
    Map<String, List<PlacedItem>> bySpace = new HashMap<>();
    for (PlacedItem item : placed) {
      bySpace.computeIfAbsent(item.space().id(), id -> new ArrayList<>()).add(item);
    }
    long moves = 0L;
    for (PlacedItem item : placed) {
      Reach reach = item.item().reach();
      if (reach == Reach.MANY_A_DAY || reach == Reach.DAILY) {
        List<PlacedItem> there = bySpace.getOrDefault(item.space().id(), List.of());
        moves += (reach == Reach.MANY_A_DAY ? 3L : 1L) * WayOut.toMoveFirst(item, there).size();
      }
    }
    return moves;
  }

  /** The plan as it stands. */
  LoadPlan plan(LoadPlan.Origin origin) {
    List<Placement> placements = new ArrayList<>();
    for (PlacedItem item : placed()) {
      placements.add(item.placement());
    }
    return new LoadPlan(problem.scenario().id(), seen.view().moduleBays(), placements, origin);
  }
}
