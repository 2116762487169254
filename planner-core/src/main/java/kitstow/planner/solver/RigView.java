package kitstow.planner.solver;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Rig;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.Space;
import kitstow.planner.packing.Clusters;
import kitstow.planner.packing.Decoder;
import kitstow.planner.packing.Wanted;
import kitstow.planner.rules.Breach;
import kitstow.planner.rules.PlanRule;
import kitstow.planner.rules.RuleBook;
import kitstow.planner.rules.Situation;

/** A rig under one choice of bays, with what the search needs of it, worked out once. */
final class RigView {
  private final Map<String, String> moduleBays;
  private final Rig rig;
  private final List<List<Space>> clusters;
  private final Map<String, Integer> clusterOf = new HashMap<>();
  private final Decoder decoder;
  private final List<Space> fromTheFront;
  private final Map<String, Boolean> possible = new HashMap<>();
  private final int conflicts;

  RigView(Scenario scenario, Map<String, String> wantedBays) {
    Bays bays = Bays.settle(scenario, wantedBays);
    this.moduleBays = bays.fitted();
    this.rig = Rig.of(scenario, moduleBays);
    this.clusters = Clusters.of(rig);
    for (int i = 0; i < clusters.size(); i++) {
      for (Space space : clusters.get(i)) {
        clusterOf.put(space.id(), i);
      }
    }
    this.decoder = new Decoder(rig);
    this.fromTheFront = new ArrayList<>(rig.spaces().values());
    fromTheFront.sort(Comparator.comparingInt(space -> space.box().minXMm()));
    this.conflicts = bays.refused() + conflictsOf(scenario, moduleBays);
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

  List<List<Space>> clusters() {
    return clusters;
  }

  /** Index of a space's cluster, or -1 where the space is not there under these bays. */
  int clusterOf(String spaceId) {
    return clusterOf.getOrDefault(spaceId, -1);
  }

  /** Whether a unit can stand in a space at all, in any pose. */
  boolean mayHold(Wanted wanted, Space space) {
    return possible.computeIfAbsent(
        wanted.item().id() + " " + space.id(), key -> decoder.mayHold(wanted, space));
  }

  /** Spaces in the order of their front ends. */
  List<Space> fromTheFront() {
    return fromTheFront;
  }

  /** How far behind the rear axle an x is; zero ahead of it. */
  double reachMm(int xMm) {
    return Math.max(0.0, (double) xMm - rig.scenario().ute().wheelbaseMm());
  }

  Decoder decoder() {
    return decoder;
  }

  int conflicts() {
    return conflicts;
  }
}
