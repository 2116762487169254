package kitstow.planner.solver;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.ModuleChoice;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Placement;
import kitstow.planner.packing.Pose;
import kitstow.planner.packing.Wanted;
import kitstow.planner.statics.Lever;

/** From plans to what the search changes, and back. */
final class PlanningMapper {
  private PlanningMapper() {}

  /** What the search changes, as a packing has it. */
  static PlanningLoad toPlanning(PackingProblem problem, Packing packing) {
    List<PlanningItem> items = new ArrayList<>();
    int poses = 1;
    for (int i = 0; i < problem.units().size(); i++) {
      Wanted wanted = problem.units().get(i);
      poses = Math.max(poses, wanted.poses().size());
      PlanningItem item = new PlanningItem(i, wanted);
      item.setSpace(packing.spaceOf(i));
      item.setRank(packing.rankOf(i));
      item.setStance(packing.stanceOf(i));
      items.add(item);
    }
    List<PlanningModule> modules = new ArrayList<>();
    for (ModuleChoice choice : PackingProblem.openModules(problem.scenario())) {
      PlanningModule module = new PlanningModule(choice);
      module.setBay(packing.wantedBays().getOrDefault(module.id(), PlanningModule.NO_BAY));
      modules.add(module);
    }
    PlanningLoad load =
        new PlanningLoad(problem, items, modules, new ArrayList<>(problem.allSpaceIds()), poses);
    load.setScore(packing.levels().toScore(problem.scenario().settings().massLimits()));
    return load;
  }

  /**
   * A packing that follows a plan: its bays, its spaces, its order and its places. Only what could
   * not be put where it is by any search stands elsewhere, or nowhere.
   */
  static Packing toPacking(PackingProblem problem, LoadPlan plan) {
    Map<String, String> bays = new LinkedHashMap<>(PackingProblem.firstBays(problem.scenario()));
    for (ModuleChoice choice : PackingProblem.openModules(problem.scenario())) {
      String id = choice.module().id();
      String bay = plan.moduleBays().get(id);
      if (bay == null) {
        bays.remove(id);
      } else {
        bays.put(id, bay);
      }
    }
    Packing packing = new Packing(problem, bays);
    Map<String, Integer> unitOf = new HashMap<>();
    for (int i = 0; i < problem.units().size(); i++) {
      Wanted wanted = problem.units().get(i);
      unitOf.put(wanted.item().id() + " " + wanted.unit(), i);
    }
    for (Placement placement : plan.placements()) {
      Integer unit = unitOf.get(placement.itemId() + " " + placement.unit());
      if (unit != null) {
        putBack(packing, unit, placement);
      }
    }
    return packing;
  }

  /** Puts a unit where a plan has it if it can stand there, else near it. */
  private static void putBack(Packing packing, int unit, Placement placement) {
    int site = packing.view().sites().indexOf(placement.spaceId());
    int pose = poseOf(packing.problem(), unit, placement);
    long first = pose < 0 ? Stance.ANY : Stance.preferring(pose);
    long there = pose < 0 ? Stance.ANY : Stance.at(pose, placement.corner());
    long[] choices = {Stance.ANY, Stance.STACKED, first, first + Stance.STACKED, there};
    PlacedItem any = null;
    for (long choice : choices) {
      PlacedItem found = site < 0 ? null : packing.tryAt(unit, choice, site);
      if (found != null && found.placement().equals(placement)) {
        packing.put(unit, choice, site, found);
        return;
      }
      any = found == null ? any : found;
    }
    if (any != null) {
      packing.put(unit, first, site, any);
    }
  }

  private static int poseOf(PackingProblem problem, int unit, Placement placement) {
    List<Pose> poses = problem.units().get(unit).poses();
    for (int i = 0; i < poses.size(); i++) {
      if (poses.get(i).shape() == placement.shape() && poses.get(i).turn() == placement.turn()) {
        return i;
      }
    }
    return -1;
  }

  /** The plan that a state of the search stands for, and its figures. */
  static PlanSearch.Best toBest(PlanningLoad load, long seed, long steps, long scoreCalculations) {
    Packing packing = new Packing(load.problem(), PackingScore.baysOf(load));
    packing.follow(load);
    LoadPlan.Origin origin =
        new LoadPlan.Origin(
            "solver",
            OptionalLong.of(seed),
            steps > 0L ? OptionalLong.of(steps) : OptionalLong.empty(),
            OptionalLong.of(Math.round(load.problem().stepNm() * 10.0)));
    LoadPlan plan = packing.plan(origin);
    return new PlanSearch.Best(
        plan,
        Lever.newtonMetres(packing.momentHalfGMm(), Lever.STANDARD_GRAVITY_M_S2),
        load.items().size() - plan.placements().size(),
        scoreCalculations);
  }
}
