package kitstow.planner.solver;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.Item;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Loading;
import kitstow.planner.model.ModuleChoice;
import kitstow.planner.model.Need;
import kitstow.planner.model.Placement;
import kitstow.planner.model.Rig;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.Space;
import kitstow.planner.model.SpacePointMm;
import kitstow.planner.packing.Blocks;
import kitstow.planner.packing.Pose;
import kitstow.planner.packing.Wanted;
import org.jspecify.annotations.Nullable;

/** What does not change during one search: the scenario, its units, and rigs seen so far. */
final class PackingProblem {
  /** Of so many choices of any bays for a module that may be left out one leaves it out. */
  private static final int LEFT_OUT = 4;

  private static final int MOST_RIGS = 64;
  private static final int MOST_TABLES = 512;

  /** About a fifth of a second for 80 items in 25 spaces; with half of them it steers less well. */
  private static final int GUIDE_ITERATIONS = 60;

  private static final long MM3_A_DECILITRE = 100_000L;

  private final Scenario scenario;
  private final List<Wanted> units = new ArrayList<>();
  private final Map<String, Seen> rigs =
      new LinkedHashMap<>(16, 0.75f, /* accessOrder= */ true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Seen> eldest) {
          return size() > MOST_RIGS;
        }
      };
  private final Map<TableKey, TripTable> tables =
      new LinkedHashMap<>(16, 0.75f, /* accessOrder= */ true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<TableKey, TripTable> eldest) {
          return size() > MOST_TABLES;
        }
      };
  private final int[] kinds;
  private final int[] varying;
  private final List<int[]> groups;
  private final Finds finds;
  private final Handling handling = new Handling();
  private final Map<String, Long> unavoidable;
  private @Nullable Blocks blocks;
  private @Nullable List<String> spaceIds;
  private @Nullable Packing atHand;
  private @Nullable FloorGuide guide;
  private boolean guideKnown;
  private int rigsSeen;
  private Aim aim = Aim.ALL;
  private @Nullable LateScores late;
  private @Nullable Elites elites;
  private final Trouble trouble;
  private boolean fillsSpaces = true;
  private double stepNm = 5.0;

  private record TableKey(int rig, BitSet varyingAboard) {}

  /** A rig and the shape of its limits. */
  record Seen(RigView view, LimitShape shape) {}

  PackingProblem(Scenario scenario) {
    this.scenario = scenario;
    List<Integer> kindOf = new ArrayList<>();
    List<Integer> thatVary = new ArrayList<>();
    int kind = 0;
    for (Item item : scenario.items()) {
      for (int unit = 1; unit <= item.quantity(); unit++) {
        kindOf.add(kind);
        units.add(Wanted.of(item, unit));
        if (varies(units.size() - 1)) {
          thatVary.add(units.size() - 1);
        }
      }
      kind++;
    }
    this.kinds = kindOf.stream().mapToInt(Integer::intValue).toArray();
    this.varying = thatVary.stream().mapToInt(Integer::intValue).toArray();
    this.groups = groupsOf(units);
    this.finds = new Finds(this);
    this.trouble = new Trouble(units.size());
    this.unavoidable = overWithoutGear();
  }

  /** Every module in the first bay it lists that nobody took before it. */
  static Map<String, String> firstBays(Scenario scenario) {
    Map<String, String> bays = new LinkedHashMap<>();
    for (ModuleChoice choice : scenario.modules()) {
      for (String bay : choice.bayIds()) {
        if (!bays.containsValue(bay)) {
          bays.put(choice.module().id(), bay);
          break;
        }
      }
    }
    return bays;
  }

  Scenario scenario() {
    return scenario;
  }

  List<Wanted> units() {
    return units;
  }

  /**
   * Some bays, and these with one module moved or left out. Who had its bay is left out then, and
   * so is what stands in a module that is; the bay of a module that has no choice is nobody else's.
   */
  List<Map<String, String>> bayChoices(Map<String, String> from) {
    List<Map<String, String>> choices = new ArrayList<>();
    choices.add(from);
    List<ModuleChoice> open = openModules(scenario);
    Map<String, String> settled = new LinkedHashMap<>(from);
    open.forEach(choice -> settled.remove(choice.module().id()));
    for (ModuleChoice choice : open) {
      String id = choice.module().id();
      for (String bay : choice.bayIds()) {
        if (settled.containsValue(bay)) {
          continue;
        }
        Map<String, String> bays = new LinkedHashMap<>(from);
        bays.values().remove(bay);
        bays.put(id, bay);
        choices.add(hosted(bays));
      }
      Map<String, String> without = new LinkedHashMap<>(from);
      without.remove(id);
      choices.add(hosted(without));
    }
    return choices;
  }

  /**
   * Without modules whose bay is on one that is left out, and without what would stand in those.
   */
  private static Map<String, String> hosted(Map<String, String> bays) {
    Map<String, String> left = new LinkedHashMap<>(bays);
    boolean fewer = true;
    while (fewer) {
      fewer =
          left.values()
              .removeIf(
                  bay ->
                      bay.contains("/") && !left.containsKey(bay.substring(0, bay.indexOf('/'))));
    }
    return left;
  }

  /**
   * Some bay for each free module in turn, as far as it is free, or none where it may have none.
   */
  Map<String, String> anyBays(Random random) {
    Map<String, String> bays = new LinkedHashMap<>(firstBays(scenario));
    List<ModuleChoice> open = openModules(scenario);
    open.forEach(choice -> bays.remove(choice.module().id()));
    for (ModuleChoice choice : open) {
      List<String> free = new ArrayList<>(choice.bayIds());
      free.removeIf(bays::containsValue);
      boolean out = choice.need() != Need.MUST && random.nextInt(LEFT_OUT) == 0;
      if (!free.isEmpty() && !out) {
        bays.put(choice.module().id(), free.get(random.nextInt(free.size())));
      }
    }
    return hosted(bays);
  }

  /** Ids of all spaces that some choice of bays can have, empty bays among them. */
  List<String> allSpaceIds() {
    List<String> known = spaceIds;
    if (known == null) {
      known = findSpaceIds();
      spaceIds = known;
    }
    return known;
  }

  private List<String> findSpaceIds() {
    Set<String> ids = new LinkedHashSet<>();
    boolean open = !openModules(scenario).isEmpty();
    for (Map<String, String> choice : bayChoices(firstBays(scenario))) {
      Rig rig = rig(choice).view().rig();
      ids.addAll(open ? rig.possibleSpaceIds() : rig.spaces().keySet());
    }
    return new ArrayList<>(ids);
  }

  /** Modules whose bay is open or that may be left out. */
  static List<ModuleChoice> openModules(Scenario scenario) {
    List<ModuleChoice> open = new ArrayList<>();
    for (ModuleChoice choice : scenario.modules()) {
      if (choice.bayIds().size() > 1 || choice.need() != Need.MUST) {
        open.add(choice);
      }
    }
    return open;
  }

  /** The rig under some bays; worked out once for each choice of bays. */
  Seen rig(Map<String, String> moduleBays) {
    String key = new TreeMap<>(moduleBays).toString();
    Seen seen = rigs.get(key);
    if (seen == null) {
      RigView view = new RigView(scenario, moduleBays, rigsSeen++);
      seen = new Seen(view, new LimitShape(view, scenario));
      rigs.put(key, seen);
    }
    return seen;
  }

  /** The states of the trip with some units aboard; only what is used up or grows matters. */
  TripTable table(Seen seen, boolean[] aboard) {
    BitSet bits = new BitSet();
    for (int unit : varying) {
      if (aboard[unit] && seen.view().siteCount() > 0) {
        bits.set(unit);
      }
    }
    TableKey key = new TableKey(seen.view().number(), bits);
    TripTable table = tables.get(key);
    if (table == null) {
      List<Placement> placements = new ArrayList<>();
      for (int unit : varying) {
        if (bits.get(unit)) {
          placements.add(anywhere(units.get(unit), seen));
        }
      }
      LoadPlan plan =
          new LoadPlan(scenario.id(), seen.view().moduleBays(), placements, LoadPlan.Origin.HAND);
      table = new TripTable(Loading.of(scenario, plan), seen.shape(), units);
      tables.put(key, table);
    }
    return table;
  }

  /** Masses along a trip do not depend on where a thing stands. */
  private static Placement anywhere(Wanted unit, Seen seen) {
    Pose pose = unit.poses().get(0);
    return new Placement(
        unit.item().id(),
        unit.unit(),
        seen.view().sites().space(0).id(),
        pose.shape(),
        pose.turn(),
        new SpacePointMm(0, 0, 0));
  }

  /** Number that units of one item share. */
  int kindOf(int unit) {
    return kinds[unit];
  }

  private static List<int[]> groupsOf(List<Wanted> units) {
    Map<String, List<Integer>> byName = new LinkedHashMap<>();
    for (int i = 0; i < units.size(); i++) {
      int unit = i;
      units
          .get(unit)
          .item()
          .group()
          .ifPresent(name -> byName.computeIfAbsent(name, n -> new ArrayList<>()).add(unit));
    }
    List<int[]> groups = new ArrayList<>();
    for (List<Integer> members : byName.values()) {
      groups.add(members.stream().mapToInt(Integer::intValue).toArray());
    }
    return groups;
  }

  /** Units that want to ride together, group by group. */
  List<int[]> groups() {
    return groups;
  }

  /** Blocks in which unlike units fit together. */
  Blocks blocks() {
    Blocks known = blocks;
    if (known == null) {
      List<Blocks.Kind> all = new ArrayList<>();
      for (int unit = 0; unit < units.size(); unit++) {
        Wanted wanted = units.get(unit);
        if (wanted.unit() == 1 && !isPinned(unit)) {
          all.add(new Blocks.Kind(kinds[unit], wanted, wanted.item().quantity()));
        }
      }
      known = Blocks.of(scenario.items().size(), all, largestRoom());
      blocks = known;
    }
    return known;
  }

  /** As long as the longest space, as wide as the widest and as high as the highest. */
  private SizeMm largestRoom() {
    int length = 1;
    int width = 1;
    int height = 1;
    for (Space space : rig(firstBays(scenario)).view().rig().spaces().values()) {
      length = Math.max(length, space.box().lengthMm());
      width = Math.max(width, space.box().widthMm());
      height = Math.max(height, space.box().heightMm());
    }
    return new SizeMm(length, width, height);
  }

  /**
   * A load under search as a packing. It is one and the same each time, so that only what has
   * changed since is worked out; whoever asks may go on with it, the next to ask finds it following
   * again.
   */
  Packing packingOf(PlanningLoad load) {
    Packing packing = atHand;
    if (packing == null) {
      packing = new Packing(this, PackingScore.baysOf(load));
      atHand = packing;
    }
    packing.follow(load);
    return packing;
  }

  /**
   * What places cost where all that a load has aboard competes for them; worked out once. Null
   * where modules have a choice of bays, since each choice would need one of its own, and where
   * nothing moves.
   */
  @Nullable FloorGuide guide(PlanningLoad load) {
    if (!guideKnown && openModules(scenario).isEmpty()) {
      LoadPlan plan = packingOf(load).plan(LoadPlan.Origin.HAND);
      guide = Floor.guide(Loading.of(scenario, plan), GUIDE_ITERATIONS).orElse(null);
    }
    guideKnown = true;
    return guide;
  }

  Finds finds() {
    return finds;
  }

  Handling handling() {
    return handling;
  }

  /** Overload by limit that remains with all gear home, whatever bays are tried, grams. */
  Map<String, Long> unavoidable() {
    return unavoidable;
  }

  private Map<String, Long> overWithoutGear() {
    Map<String, Long> least = null;
    for (Map<String, String> bays : bayChoices(firstBays(scenario))) {
      TripTable table = table(rig(bays), new boolean[units.size()]);
      Map<String, Long> over = new LoadSums(table, units.size(), Map.of()).overByLimit();
      if (least == null) {
        least = new HashMap<>(over);
      } else {
        least.keySet().retainAll(over.keySet());
        least.replaceAll((limit, grams) -> Math.min(grams, over.getOrDefault(limit, grams)));
      }
      if (least.isEmpty()) {
        break;
      }
    }
    return least == null ? Map.of() : least;
  }

  /** What the search is told of. */
  Aim aim() {
    return aim;
  }

  void aim(Aim value) {
    aim = value;
  }

  /** What a move must come to in the search that goes on now; null where none says so. */
  @Nullable LateScores late() {
    return late;
  }

  void late(@Nullable LateScores value) {
    late = value;
  }

  /** Packings whose spaces are taken over in the round that goes on now; null where none are. */
  @Nullable Elites elites() {
    return elites;
  }

  void elites(@Nullable Elites value) {
    elites = value;
  }

  /** Which units have been hard to place of late. */
  Trouble trouble() {
    return trouble;
  }

  /**
   * Whether a unit gains or loses mass on the trip, so that it matters to others if it is along.
   */
  boolean varies(int unit) {
    Item item = units.get(unit).item();
    return item.content().isPresent() || item.growth().isPresent();
  }

  /** Whether the user wants a unit in one space, or at one place in it. */
  boolean isPinned(int unit) {
    return units.get(unit).item().pin().isPresent();
  }

  /** What a unit that need not come costs while it is home: its value, or decilitres. */
  long costAtHome(int unit, Aim by) {
    Item item = units.get(unit).item();
    return by == Aim.ROOM && item.need() != Need.MUST
        ? 1L + item.shapes().get(0).volumeMm3() / MM3_A_DECILITRE
        : ScoreLevels.valueOf(item);
  }

  /** Whether whole spaces are filled anew, block by block. */
  boolean fillsSpaces() {
    return fillsSpaces;
  }

  /** Without it the search does what it can unit by unit; to see what filling is worth. */
  void fillsSpaces(boolean value) {
    fillsSpaces = value;
  }

  double stepNm() {
    return stepNm;
  }

  void stepNm(double value) {
    stepNm = value;
  }
}
