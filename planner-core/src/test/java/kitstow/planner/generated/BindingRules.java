package kitstow.planner.generated;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.PointMm;
import kitstow.planner.geometry.Turn;
import kitstow.planner.model.Item;
import kitstow.planner.model.LoadKind;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Mark;
import kitstow.planner.model.ModuleChoice;
import kitstow.planner.model.Need;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Placement;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.Space;
import kitstow.planner.model.SpacePointMm;
import kitstow.planner.report.CheckReport;
import kitstow.planner.report.Finding;
import kitstow.planner.rules.Breach;
import kitstow.planner.rules.LimitRule;
import kitstow.planner.rules.PlanRule;
import kitstow.planner.rules.RuleBook;
import kitstow.planner.rules.Situation;
import kitstow.planner.statics.LoadLine;
import kitstow.planner.statics.OverhangMoment;

/**
 * Which rules are in the way of a plan. A rule binds where moving, adding or leaving one unit, or
 * giving one module another of its bays, would make the plan better, and this rule is the only one
 * that it would break. Better means less must-take gear left, then less value left, then less
 * moment.
 */
public final class BindingRules {
  private static final int MOST_TRIALS = 4_000;

  private final Scenario scenario;
  private final LoadPlan plan;
  private final Loading loading;
  private final Judged base;
  private final Set<RuleId> binding = EnumSet.noneOf(RuleId.class);

  /** A plan by what makes it better, and what it breaks. */
  private record Judged(
      long mustLeft, long valueLeft, long momentHalfGMm, Map<String, RuleId> broken) {
    boolean betterThan(Judged other) {
      if (mustLeft != other.mustLeft) {
        return mustLeft < other.mustLeft;
      }
      return valueLeft != other.valueLeft
          ? valueLeft < other.valueLeft
          : momentHalfGMm < other.momentHalfGMm;
    }
  }

  private BindingRules(Scenario scenario, LoadPlan plan) {
    this.scenario = scenario;
    this.plan = plan;
    this.loading =
        Loading.of(
            scenario,
            new LoadPlan(scenario.id(), plan.moduleBays(), plan.placements(), plan.origin()));
    this.base = judge(plan.moduleBays(), plan.placements());
  }

  /** Rules that bind. */
  public static Set<RuleId> of(Scenario scenario, LoadPlan plan, long seed) {
    BindingRules rules = new BindingRules(scenario, plan);
    rules.tryAll(new Random(seed));
    return rules.binding;
  }

  /** Rules that a plan breaks, and preferences it passes over. */
  public static Set<RuleId> broken(CheckReport report) {
    Set<RuleId> broken = EnumSet.noneOf(RuleId.class);
    for (Finding finding : report.findings()) {
      if (finding.severity() == Finding.Severity.BROKEN || !finding.rule().binding()) {
        broken.add(finding.rule());
      }
    }
    return broken;
  }

  private Judged judge(Map<String, String> bays, List<Placement> placements) {
    Loading changed =
        Loading.of(scenario, new LoadPlan(scenario.id(), bays, placements, plan.origin()));
    Situation situation = Situation.of(changed);
    Map<String, RuleId> broken = new LinkedHashMap<>();
    for (PlanRule rule : RuleBook.PLAN_RULES) {
      for (Breach breach : rule.breaches(situation)) {
        if (breach.rule().binding()) {
          broken.put(breach.key(), breach.rule());
        }
      }
    }
    long moment = 0L;
    for (LoadState state : situation.judgedStates()) {
      if (state.kind() != LoadKind.CERTIFICATION) {
        addLimits(broken, changed, state);
      }
      if (state.kind() == LoadKind.MOVING) {
        moment = Math.max(moment, OverhangMoment.of(changed, state).halfGMm());
      }
    }
    long must = 0L;
    long value = 0L;
    for (Item item : scenario.items()) {
      for (int unit = 1; unit <= item.quantity(); unit++) {
        if (changed.home().contains(item.keyOf(unit))) {
          must += item.need() == Need.MUST ? 1L : 0L;
          value += item.need() == Need.MUST ? 0L : item.value();
        }
      }
    }
    return new Judged(must, value, moment, broken);
  }

  private static void addLimits(Map<String, RuleId> broken, Loading loading, LoadState state) {
    for (LimitRule rule : RuleBook.LIMITS) {
      for (LoadLine line : rule.lines(loading, state)) {
        if (line.over(state)) {
          broken.put(line.rule() + " " + line.subjectId(), line.rule());
        }
      }
    }
  }

  private void consider(Judged changed) {
    Set<String> added = new TreeSet<>(changed.broken().keySet());
    added.removeAll(base.broken().keySet());
    Set<RuleId> rules = EnumSet.noneOf(RuleId.class);
    added.forEach(key -> rules.add(changed.broken().get(key)));
    if (rules.size() == 1 && changed.betterThan(base)) {
      binding.addAll(rules);
    }
  }

  private void tryAll(Random random) {
    tryModules();
    tryLeaving();
    int tried = 0;
    for (Placement trial : trials(random)) {
      if (!worthwhile(trial) || tried++ > MOST_TRIALS) {
        continue;
      }
      List<Placement> changed = new ArrayList<>(plan.placements());
      changed.removeIf(p -> p.itemId().equals(trial.itemId()) && p.unit() == trial.unit());
      changed.add(trial);
      consider(judge(plan.moduleBays(), changed));
    }
  }

  /** Not further back than now, and not for certain stopped by a rule that is known to bind. */
  private boolean worthwhile(Placement trial) {
    Space space = loading.rig().spaces().get(trial.spaceId());
    Item item = itemOf(trial);
    if (space == null) {
      return false;
    }
    BoxMm box = boxOf(trial, item, space);
    PlacedItem now = loading.placed().get(item.keyOf(trial.unit()));
    if (now != null && behindMm(box) >= behindMm(now.box())) {
      return false;
    }
    if (binding.contains(RuleId.TURN_ALLOWED) && !item.turns().contains(trial.turn())) {
      return false;
    }
    if (binding.contains(RuleId.INSIDE_SPACE) && !space.bars().isPresent() && !inside(box, space)) {
      return false;
    }
    for (PlacedItem other : loading.placed().values()) {
      if (binding.contains(RuleId.NO_OVERLAP)
          && !(now != null && other.is(now))
          && share(box, other.box())) {
        return false;
      }
    }
    return true;
  }

  private Item itemOf(Placement placement) {
    return scenario.items().stream()
        .filter(item -> item.id().equals(placement.itemId()))
        .findFirst()
        .orElseThrow();
  }

  private static BoxMm boxOf(Placement placement, Item item, Space space) {
    SpacePointMm corner = placement.corner();
    return BoxMm.at(
        new PointMm(
            space.box().minXMm() + corner.xMm(),
            space.box().minYMm() + corner.yMm(),
            space.box().minZMm() + corner.zMm()),
        placement.turn().applyTo(item.shapes().get(placement.shape())));
  }

  /** Mean distance behind the rear axle, times two. */
  private double behindMm(BoxMm box) {
    double front = (double) box.minXMm() - scenario.ute().wheelbaseMm();
    double rear = (double) box.maxXMm() - scenario.ute().wheelbaseMm();
    return front >= 0.0 ? front + rear : rear <= 0.0 ? 0.0 : rear * rear / (rear - front);
  }

  private static boolean inside(BoxMm box, Space space) {
    BoxMm room = space.box();
    return box.minXMm() >= room.minXMm()
        && box.maxXMm() <= room.maxXMm()
        && box.minYMm() >= room.minYMm()
        && box.maxYMm() <= room.maxYMm()
        && box.minZMm() >= room.minZMm()
        && box.maxZMm() <= room.maxZMm();
  }

  private static boolean share(BoxMm a, BoxMm b) {
    return a.minXMm() < b.maxXMm()
        && b.minXMm() < a.maxXMm()
        && a.minYMm() < b.maxYMm()
        && b.minYMm() < a.maxYMm()
        && a.minZMm() < b.maxZMm()
        && b.minZMm() < a.maxZMm();
  }

  private void tryModules() {
    for (ModuleChoice choice : scenario.modules()) {
      String id = choice.module().id();
      for (String bay : choice.bayIds()) {
        if (plan.moduleBays().containsKey(id) && !plan.moduleBays().containsValue(bay)) {
          Map<String, String> bays = new LinkedHashMap<>(plan.moduleBays());
          bays.put(id, bay);
          if (Loading.of(scenario, bare(bays)).rig().spaces().keySet().containsAll(used())) {
            consider(judge(bays, plan.placements()));
          }
        }
      }
    }
  }

  private LoadPlan bare(Map<String, String> bays) {
    return new LoadPlan(scenario.id(), bays, List.of(), plan.origin());
  }

  private Set<String> used() {
    Set<String> used = new TreeSet<>();
    plan.placements().forEach(placement -> used.add(placement.spaceId()));
    return used;
  }

  /** A must-take unit that costs moment binds by having to come along. */
  private void tryLeaving() {
    for (Placement placement : plan.placements()) {
      List<Placement> fewer = new ArrayList<>(plan.placements());
      fewer.remove(placement);
      Judged without = judge(plan.moduleBays(), fewer);
      boolean breaksNeedAlone =
          without.broken().values().stream().filter(rule -> rule == RuleId.MUST_TAKE).count()
                  > base.broken().values().stream().filter(rule -> rule == RuleId.MUST_TAKE).count()
              && without.broken().size() == base.broken().size() + 1;
      if (breaksNeedAlone && without.momentHalfGMm() < base.momentHalfGMm()) {
        binding.add(RuleId.MUST_TAKE);
        return;
      }
    }
  }

  /** Other places for every unit: a little forward, in corners, beside and on other things. */
  private List<Placement> trials(Random random) {
    List<Placement> trials = new ArrayList<>();
    for (Item item : scenario.items()) {
      for (int unit = 1; unit <= item.quantity(); unit++) {
        PlacedItem now = loading.placed().get(item.keyOf(unit));
        if (now != null) {
          addForward(trials, now);
        }
        for (Space space : loading.rig().spaces().values()) {
          addIn(trials, item, unit, space, loading.in(space.id()), random);
          addIn(trials, item, unit, space, loading.in(space.id()), random);
        }
      }
    }
    Collections.shuffle(trials, random);
    trials.sort(Comparator.comparing(trial -> !outsideOnly(itemOf(trial))));
    return trials;
  }

  /** Gas and fuel come first, since they are few. */
  private static boolean outsideOnly(Item item) {
    return item.marks().contains(Mark.GAS) || item.marks().contains(Mark.FUEL);
  }

  private static void addForward(List<Placement> trials, PlacedItem now) {
    SpacePointMm at = now.placement().corner();
    for (int by : new int[] {5, 60, 200}) {
      trials.add(at(now.placement(), now.placement().turn(), at.xMm() - by, at.yMm(), at.zMm()));
    }
    for (Turn turn : Turn.values()) {
      trials.add(at(now.placement(), turn, at.xMm(), at.yMm(), at.zMm()));
    }
  }

  private static void addIn(
      List<Placement> trials,
      Item item,
      int unit,
      Space space,
      List<PlacedItem> there,
      Random random) {
    List<Turn> turns = new ArrayList<>(item.turns());
    Collections.sort(turns);
    Turn turn = turns.get(random.nextInt(turns.size()));
    Placement any = new Placement(item.id(), unit, space.id(), 0, turn, new SpacePointMm(0, 0, 0));
    int sideways = space.box().widthMm() - turn.applyTo(item.shapes().get(0)).widthMm();
    trials.add(any);
    trials.add(at(any, turn, 0, Math.max(0, sideways), 0));
    for (PlacedItem neighbour : there) {
      BoxMm other = neighbour.box();
      int x = other.minXMm() - space.box().minXMm();
      int y = other.minYMm() - space.box().minYMm();
      int z = other.minZMm() - space.box().minZMm();
      trials.add(at(any, turn, x, y, z + other.heightMm()));
      trials.add(at(any, turn, x, y + other.widthMm(), z));
      trials.add(at(any, turn, x + other.lengthMm(), y, z));
    }
  }

  private static Placement at(Placement placement, Turn turn, int xMm, int yMm, int zMm) {
    return new Placement(
        placement.itemId(),
        placement.unit(),
        placement.spaceId(),
        placement.shape(),
        turn,
        new SpacePointMm(xMm, yMm, zMm));
  }
}
