package kitstow.planner.solver;

import java.util.OptionalDouble;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Scenario;
import kitstow.planner.statics.Lever;

/**
 * Tells when a search may end because its plan is as good as proved: everything is aboard, nothing
 * is over its limit, and the moment is hardly above the floor that no plan can be under. Modules
 * with a choice of bays never are, since the floor holds only for the bays they have; nor is a rig
 * that is over a limit without any gear, since the floor takes every limit for one that can be
 * kept.
 */
final class NearFloor {
  /** A moment that is above the floor by no more than this share of it is near enough. */
  static final double ENOUGH = 0.005;

  /** About a tenth of a second: places weighed in all iterations together. */
  private static final int WORK = 80_000;

  private static final int FEWEST_ITERATIONS = 20;

  private final Scenario scenario;
  private final boolean settled;

  /** The floor is one for all plans with everything aboard, so it is worked out once. */
  private OptionalDouble floorNm = OptionalDouble.empty();

  NearFloor(Scenario scenario) {
    this.scenario = scenario;
    this.settled = PackingProblem.openModules(scenario).isEmpty();
  }

  /** Whether a packing need not be bettered. */
  boolean holds(Packing packing) {
    if (!settled || packing.placed().isEmpty() || !packing.problem().unavoidable().isEmpty()) {
      return false;
    }
    ScoreLevels levels = packing.levels(Aim.ALL);
    boolean whole =
        levels.conflicts() == 0L
            && levels.overG() == 0L
            && levels.mustLeft() == 0L
            && packing.placed().size() == packing.problem().units().size();
    if (!whole) {
      return false;
    }
    if (!floorNm.isPresent()) {
      int places = packing.placed().size() * packing.view().siteCount();
      int iterations = Math.max(FEWEST_ITERATIONS, Math.min(Floor.USUAL_ITERATIONS, WORK / places));
      Loading loading = Loading.of(scenario, packing.plan(LoadPlan.Origin.HAND));
      floorNm = OptionalDouble.of(Floor.of(loading, iterations).floorNm());
    }
    double momentNm = Lever.newtonMetres(packing.momentHalfGMm(), Lever.STANDARD_GRAVITY_M_S2);
    return momentNm <= floorNm.getAsDouble() * (1.0 + ENOUGH);
  }
}
