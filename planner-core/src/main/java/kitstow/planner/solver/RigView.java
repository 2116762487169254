package kitstow.planner.solver;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Rig;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Scenario;
import kitstow.planner.packing.Decoder;
import kitstow.planner.packing.Room;
import kitstow.planner.packing.SiteMap;
import kitstow.planner.rules.Breach;
import kitstow.planner.rules.PlanRule;
import kitstow.planner.rules.RuleBook;
import kitstow.planner.rules.Situation;

/** A rig under one choice of bays, with what the search needs of it, worked out once. */
final class RigView {
  private final int number;
  private final Map<String, String> moduleBays;
  private final Rig rig;
  private final SiteMap sites;
  private final Decoder decoder;
  private final int[] fromTheFront;
  private final double[] leastReachMm;
  private final int conflicts;
  private final long mustModulesLeft;
  private final long moduleValueLeft;

  /**
   * Fits the modules.
   *
   * @param number tells this choice of bays from others
   */
  RigView(Scenario scenario, Map<String, String> wantedBays, int number) {
    this.number = number;
    Bays bays = Bays.settle(scenario, wantedBays);
    this.moduleBays = bays.fitted();
    this.rig = Rig.of(scenario, moduleBays);
    this.sites = SiteMap.of(rig);
    this.decoder = new Decoder(rig, sites);
    this.leastReachMm = new double[sites.size()];
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < sites.size(); i++) {
      order.add(i);
      int front = Room.of(sites.space(i)).minXMm();
      leastReachMm[i] = Math.max(0.0, (double) front - scenario.ute().wheelbaseMm());
    }
    order.sort(Comparator.comparingInt(i -> Room.of(sites.space(i)).minXMm()));
    this.fromTheFront = order.stream().mapToInt(Integer::intValue).toArray();
    this.conflicts = bays.refused() + conflictsOf(scenario, moduleBays);
    this.mustModulesLeft = ScoreLevels.mustModulesLeft(scenario.modules(), moduleBays.keySet());
    this.moduleValueLeft = ScoreLevels.moduleValueLeft(scenario.modules(), moduleBays.keySet());
  }

  /** Modules that do not fit, foul a door or stand in each other's way. */
  private static int conflictsOf(Scenario scenario, Map<String, String> moduleBays) {
    Situation empty =
        Situation.of(
            Loading.of(
                scenario,
                new LoadPlan(scenario.id(), moduleBays, new ArrayList<>(), LoadPlan.Origin.HAND)));
    int conflicts = 0;
    for (PlanRule rule : RuleBook.PLAN_RULES) {
      for (Breach breach : rule.breaches(empty)) {
        boolean ofModules =
            breach.rule() == RuleId.MODULE_IN_BAY
                || breach.rule() == RuleId.MODULE_CLASH
                || breach.rule() == RuleId.CANOPY_CLASH
                || breach.rule() == RuleId.SLIDE_ENVELOPE;
        conflicts += ofModules ? 1 : 0;
      }
    }
    return conflicts;
  }

  Map<String, String> moduleBays() {
    return moduleBays;
  }

  Rig rig() {
    return rig;
  }

  /** Tells this choice of bays from others of the same search. */
  int number() {
    return number;
  }

  SiteMap sites() {
    return sites;
  }

  /** Number of spaces. */
  int siteCount() {
    return fromTheFront.length;
  }

  /** Index of the space that is the i-th from the front. */
  int fromTheFront(int i) {
    return fromTheFront[i];
  }

  /** How far behind the rear axle the front of a space is; zero ahead of it. */
  double leastReachMm(int site) {
    return leastReachMm[site];
  }

  Decoder decoder() {
    return decoder;
  }

  int conflicts() {
    return conflicts;
  }

  /** Must-take modules that are not fitted. */
  long mustModulesLeft() {
    return mustModulesLeft;
  }

  /** Value of optional modules that are not fitted. */
  long moduleValueLeft() {
    return moduleValueLeft;
  }
}
