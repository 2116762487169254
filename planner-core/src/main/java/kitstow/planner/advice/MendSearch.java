package kitstow.planner.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import kitstow.planner.model.FittedModule;
import kitstow.planner.model.Item;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.RuleId;
import kitstow.planner.report.Finding;
import kitstow.planner.report.Mend;
import kitstow.planner.rules.Situation;

/**
 * Looks for changes that mend one finding. Single changes come first, the least trouble first, and
 * leaving something home last; then sequences of two and three, each step on from the most helpful
 * ones before it; then as much left at home as it takes. Every change is carried out and the trip
 * run again before it is told. The same plan always gives the same mend.
 */
final class MendSearch {
  private static final int MOST_STEPS = 3;

  /** Changes at each step from which the next one is tried. */
  private static final int MOST_BRANCHES = 3;

  /** The same where room is sought for what is missing: nothing tells which one makes it. */
  private static final int MOST_ROOMS = 12;

  /** Changes of one step that are judged in full. */
  private static final int MOST_JUDGED = 40;

  private final Situation situation;
  private final Finding finding;
  private final Ledger before;
  private final double broken;
  private final boolean missing;

  MendSearch(Situation situation, Ledger before, Finding finding) {
    this.situation = situation;
    this.before = before;
    this.finding = finding;
    this.broken = before.amount(finding.key());
    this.missing = finding.rule() == RuleId.MUST_TAKE;
  }

  /** A change that was judged and does no harm elsewhere. */
  private record Tried(Change change, Situation then, double left) {}

  /** A change with what is left of the finding at a quick look; zero where that cannot tell. */
  private record Hopeful(Change change, Loading loading, double left) {}

  Mend find() {
    Tried start = new Tried(new Change(List.of(), plan()), situation, broken);
    List<Tried> helpful = new ArrayList<>();
    if (inReach()) {
      Optional<Tried> mended = steps(start, helpful);
      if (mended.isPresent()) {
        return mend(Mend.Outcome.MENDED, mended.get());
      }
    }
    Tried more = leavingMore(start);
    if (more.left() == 0.0) {
      return mend(Mend.Outcome.BY_LEAVING_MORE, more);
    }
    helpful.add(more);
    return mend(Mend.Outcome.NOT_MENDED, best(helpful).get(0));
  }

  /**
   * Whether the three heaviest units could do it if all their load on the limit went. What is moved
   * behind the rear axle takes more off the front one than it put there.
   */
  private boolean inReach() {
    Optional<SameMasses> limit = limit(situation);
    if (!limit.isPresent() || finding.rule() == RuleId.FRONT_AXLE_LIMIT) {
      return true;
    }
    List<Double> loads = new ArrayList<>();
    for (PlacedItem unit : situation.loading().placed().values()) {
      loads.add(limit.get().loadKg(unit.key()));
    }
    for (FittedModule module : situation.loading().rig().modules().values()) {
      loads.add(limit.get().loadKg(module.module().id()));
    }
    loads.sort(Comparator.reverseOrder());
    double most = 0.0;
    for (double load : loads.subList(0, Math.min(MOST_STEPS, loads.size()))) {
      most += load;
    }
    return most >= broken;
  }

  private Optional<Tried> steps(Tried start, List<Tried> helpful) {
    for (boolean leaving : List.of(false, true)) {
      Optional<Tried> mended = step(start, leaving, /* swapping= */ true, helpful);
      if (mended.isPresent()) {
        return mended;
      }
    }
    List<Tried> branches = best(helpful);
    for (int steps = 2; steps <= MOST_STEPS && worthGoingOn(branches, steps); steps++) {
      List<Tried> next = new ArrayList<>();
      for (boolean leaving : List.of(false, true)) {
        for (Tried branch : branches) {
          boolean swapping = branch.equals(branches.get(0));
          Optional<Tried> mended = step(branch, leaving, swapping, next);
          if (mended.isPresent()) {
            return mended;
          }
        }
      }
      helpful.addAll(next);
      branches = best(next);
    }
    return Optional.empty();
  }

  private int branches() {
    return missing ? MOST_ROOMS : MOST_BRANCHES;
  }

  private LoadPlan plan() {
    return situation.loading().plan();
  }

  private Mend mend(Mend.Outcome outcome, Tried tried) {
    return new Mend(
        finding.key(),
        outcome,
        tried.change().steps(),
        broken,
        tried.left(),
        tried.change().plan());
  }

  /**
   * Whether the steps that are left can still do it, each taking off as much as the best so far.
   */
  private boolean worthGoingOn(List<Tried> branches, int step) {
    if (branches.isEmpty()) {
      return false;
    }
    double tookOff = (broken - branches.get(0).left()) / (step - 1);
    return missing || branches.get(0).left() <= tookOff * (MOST_STEPS - step + 1) + 1.0e-9;
  }

  private List<Tried> best(List<Tried> tried) {
    List<Tried> sorted = new ArrayList<>(tried);
    sorted.sort(
        Comparator.comparingDouble(Tried::left)
            .thenComparingInt(one -> one.change().steps().size()));
    return sorted.size() > branches() ? sorted.subList(0, branches()) : sorted;
  }

  /**
   * Tries every change from a plan on.
   *
   * @param leaving whether things are left at home, or everything else
   * @param swapping whether units are swapped, too
   * @param helpful takes the changes that lessen the finding without ending it
   * @return the least troublesome change that ends it
   */
  private Optional<Tried> step(Tried from, boolean leaving, boolean swapping, List<Tried> helpful) {
    Loading loading = from.then().loading();
    Optional<SameMasses> limit = limit(from.then());
    List<Hopeful> hopeful = new ArrayList<>();
    if (leaving) {
      for (PlacedItem unit : Movers.mayStayHome(loading, limit)) {
        if (!missing || makesRoom(unit)) {
          look(Changes.leave(loading, unit), limit, hopeful);
        }
      }
    } else {
      moves(loading, limit).forEach(change -> look(change, limit, hopeful));
    }
    Optional<Tried> mended = judge(from, hopeful, helpful);
    if (mended.isPresent() || leaving || missing || !swapping) {
      return mended;
    }
    List<Hopeful> swaps = new ArrayList<>();
    swaps(loading, limit).forEach(change -> look(change, limit, swaps));
    return judge(from, swaps, helpful);
  }

  private Optional<SameMasses> limit(Situation then) {
    for (LoadState state : then.judgedStates()) {
      if (state.id().equals(finding.stateId())) {
        return SameMasses.of(then.loading(), state, finding.rule(), finding.subjectIds().get(0));
      }
    }
    return Optional.empty();
  }

  private void look(Change change, Optional<SameMasses> limit, List<Hopeful> hopeful) {
    Loading then = Loading.of(situation.loading().scenario(), change.plan());
    hopeful.add(new Hopeful(change, then, limit.map(one -> one.overKg(then)).orElse(0.0)));
  }

  /** Judges changes in full: those that seem to end the finding, then those that lessen it most. */
  private Optional<Tried> judge(Tried from, List<Hopeful> hopeful, List<Tried> helpful) {
    hopeful.sort(
        Comparator.comparingDouble((Hopeful one) -> Math.max(0.0, one.left()))
            .thenComparing(one -> one.change().last().what())
            .thenComparingDouble(one -> one.change().last().kg()));
    int judged = 0;
    int lessening = 0;
    for (Hopeful one : hopeful) {
      boolean lessens = one.left() > 0.0;
      boolean enough = lessens && (one.left() >= from.left() || lessening >= branches());
      if (judged >= MOST_JUDGED || enough) {
        break;
      }
      judged++;
      Optional<Tried> tried = tried(from, one);
      if (tried.isPresent() && tried.get().left() == 0.0) {
        return tried;
      }
      if (tried.isPresent() && (missing || tried.get().left() < from.left())) {
        helpful.add(tried.get());
        lessening++;
      }
    }
    return Optional.empty();
  }

  private Optional<Tried> tried(Tried from, Hopeful one) {
    return judged(new Hopeful(one.change().after(from.change()), one.loading(), one.left()));
  }

  /** A change with all that came before it, judged in full; nothing where it does harm. */
  private Optional<Tried> judged(Hopeful one) {
    Situation then = Situation.of(one.loading());
    Ledger after = Ledger.of(then);
    return after.noWorseThan(before, finding.key())
        ? Optional.of(new Tried(one.change(), then, after.amount(finding.key())))
        : Optional.empty();
  }

  private List<Change> moves(Loading loading, Optional<SameMasses> limit) {
    Changes changes = new Changes(loading);
    List<Change> found = new ArrayList<>();
    if (missing) {
      for (Item item : loading.scenario().items()) {
        for (int unit = 1; unit <= item.quantity(); unit++) {
          if (finding.subjectIds().contains(item.keyOf(unit))) {
            found.addAll(changes.takesOf(item, unit));
          }
        }
      }
      return found;
    }
    if (finding.rule() != RuleId.GVM_LIMIT && finding.rule() != RuleId.GCM_LIMIT) {
      for (PlacedItem unit : Movers.units(loading, finding, limit)) {
        found.addAll(changes.movesOf(unit));
      }
      for (FittedModule module : Movers.modules(loading, finding, limit)) {
        found.addAll(changes.movesOf(module));
      }
    }
    return found;
  }

  /** Whether a unit is at least half as large as what is missing. */
  private boolean makesRoom(PlacedItem unit) {
    for (Item item : situation.loading().scenario().items()) {
      for (int one = 1; one <= item.quantity(); one++) {
        if (finding.subjectIds().contains(item.keyOf(one))) {
          return 2L * Gaps.volumeMm3(unit.box()) >= item.shapes().get(0).volumeMm3();
        }
      }
    }
    return false;
  }

  private List<Change> swaps(Loading loading, Optional<SameMasses> limit) {
    List<Change> found = new ArrayList<>();
    if (finding.rule() == RuleId.GVM_LIMIT || finding.rule() == RuleId.GCM_LIMIT) {
      return found;
    }
    Changes changes = new Changes(loading);
    for (PlacedItem unit : Movers.units(loading, finding, limit)) {
      found.addAll(changes.swapsOf(unit, /* lighter= */ limit.isPresent()));
    }
    return found;
  }

  /**
   * Leaves units at home, the least missed first, until the limit is kept or there is none to
   * leave.
   */
  private Tried leavingMore(Tried start) {
    Optional<SameMasses> limit = limit(situation);
    Tried now = start;
    if (!limit.isPresent()) {
      return now;
    }
    List<PlacedItem> units = Movers.mayStayHome(situation.loading(), limit);
    int next = 0;
    while (next < units.size() && now.left() > 0.0) {
      int end = asManyAsItTakes(now, units, next, limit.get());
      now = leavingAll(now, units.subList(next, end));
      next = end;
    }
    return now;
  }

  /** Where a run of units ends that keeps the limit by a quick look; at least one. */
  private static int asManyAsItTakes(
      Tried from, List<PlacedItem> units, int first, SameMasses limit) {
    double left = limit.overKg(from.then().loading());
    int end = first;
    while (end < units.size() && (end == first || left > 0.0)) {
      left -= limit.loadKg(units.get(end).key());
      end++;
    }
    return end;
  }

  /** Leaves all of some units, or where that does harm as many of them as do none. */
  private Tried leavingAll(Tried from, List<PlacedItem> units) {
    Change change = from.change();
    Loading loading = from.then().loading();
    for (PlacedItem unit : units) {
      change = Changes.leave(loading, unit).after(change);
      loading = Loading.of(situation.loading().scenario(), change.plan());
    }
    Optional<Tried> tried = judged(new Hopeful(change, loading, /* left= */ 0.0));
    if (tried.isPresent() && tried.get().left() < from.left()) {
      return tried.get();
    }
    if (units.size() == 1) {
      return from;
    }
    int half = units.size() / 2;
    return leavingAll(leavingAll(from, units.subList(0, half)), units.subList(half, units.size()));
  }
}
