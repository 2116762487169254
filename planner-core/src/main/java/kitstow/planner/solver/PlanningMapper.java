package kitstow.planner.solver;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.OptionalLong;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.ModuleChoice;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Placement;
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
      PlanningItem item = new PlanningItem(i, wanted.key());
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
   * A packing that follows a plan: its bays, its spaces, its places, and its order from below. Only
   * what could not be put where it is by any search stands elsewhere, or nowhere.
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
    List<Placement> fromBelow = new ArrayList<>(plan.placements());
    fromBelow.sort(Comparator.comparingInt(placement -> placement.corner().zMm()));
    for (Placement placement : fromBelow) {
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
    int pose = poseOf(packing.problem().units().get(unit), placement);
    if (site < 0 || pose < 0) {
      return;
    }
    long first = Stance.preferring(pose);
    long there = Stance.at(pose, placement.corner());
    long[] stances = {Stance.ANY, Stance.STACKED, first, first + Stance.STACKED, there};
    SizeMm size = packing.problem().units().get(unit).poses().get(pose).size();
    PlacedItem any = null;
    for (long stance : stances) {
      PlacedItem found = packing.tryAt(unit, stance, site);
      if (found != null
          && found.placement().corner().equals(placement.corner())
          && found.box().equals(BoxMm.at(found.box().corner(), size))) {
        packing.put(unit, stance, site, found);
        return;
      }
      any = found == null ? any : found;
    }
    if (any != null) {
      packing.put(unit, first, site, any);
    }
  }

  /** The pose in which a unit stands in a plan or looks alike, or -1. */
  private static int poseOf(Wanted wanted, Placement placement) {
    if (placement.shape() >= wanted.item().shapes().size()) {
      return -1;
    }
    OptionalInt same = wanted.poseIn(placement);
    if (same.isPresent()) {
      return same.getAsInt();
    }
    SizeMm size = placement.turn().applyTo(wanted.item().shapes().get(placement.shape()));
    int alike = -1;
    for (int i = 0; i < wanted.poses().size(); i++) {
      alike = wanted.poses().get(i).size().equals(size) ? i : alike;
    }
    return alike;
  }

  /** The plan that a state of the search stands for, and its figures. */
  static PlanSearch.Best toBest(PlanningLoad load, long seed, long steps, long scoreCalculations) {
    Packing packing = load.problem().packingOf(load);
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
