package kitstow.planner.solver;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.stream.IntStream;
import kitstow.planner.exact.CpSat;
import kitstow.planner.exact.CpSatAssignment;
import kitstow.planner.exact.ExactAssignment;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Scenario;
import kitstow.planner.statics.Bound;
import kitstow.planner.statics.Lever;

/**
 * Up to twelve cubes and six spaces: the search against the proved optimum, most value first and
 * then least moment.
 */
final class AssignmentWitness {
  private static final long STEPS = 24_000;

  /** One case, and what the cubes are worth and put behind the axle in its two solutions. */
  record Case(long value, long momentGMm, long bestValue, long bestMomentGMm) {
    boolean optimal() {
      return value == bestValue && momentGMm <= bestMomentGMm * 1.001;
    }

    /** By how much the moment is above the optimum where the value is the same. */
    double momentGap() {
      return value == bestValue && bestMomentGMm > 0L
          ? (double) momentGMm / bestMomentGMm - 1.0
          : 0.0;
    }

    boolean betterThanTheOptimum() {
      return value > bestValue || (value == bestValue && momentGMm < bestMomentGMm);
    }
  }

  private AssignmentWitness() {}

  /** Solves the cases with the first numbers both ways. */
  static List<Case> solve(int count) {
    return IntStream.range(0, count).mapToObj(AssignmentWitness::solveOne).toList();
  }

  /** Complete search and CP-SAT prove the same value and moment in the cases of these numbers. */
  static void assertBothProofsAgree(int count) {
    CpSat.assumed();
    for (int number = 0; number < count; number++) {
      Cubes cubes = Cubes.of(number);
      ExactAssignment.Optimum one = cubes.optimum(ExactAssignment::solve);
      ExactAssignment.Optimum other = cubes.optimum(CpSatAssignment::solve);
      assertThat(other.value()).as("case %d", number).isEqualTo(one.value());
      assertThat(other.cost()).as("case %d", number).isEqualTo(one.cost());
    }
  }

  /** The floor is not above the proved optimum in the cases with the first numbers. */
  static void assertFloorsAreTrue(int count) {
    for (int number = 0; number < count; number++) {
      Cubes cubes = Cubes.of(number);
      ExactAssignment.Optimum optimum = cubes.optimum(ExactAssignment::solve);
      assertNotBelowTheFloor(cubes.scenario(), cubes.planOf(optimum), optimum.cost());
    }
  }

  private static Case solveOne(int number) {
    Cubes cubes = Cubes.of(number);
    Scenario scenario = cubes.scenario();
    ExactAssignment.Optimum optimum = cubes.optimum(ExactAssignment::solve);
    assertNotBelowTheFloor(scenario, cubes.planOf(optimum), optimum.cost());
    return judged(scenario, search(scenario, number), optimum);
  }

  /** The optimum is a sound plan, and the floor under plans of the same cubes is not above it. */
  private static void assertNotBelowTheFloor(Scenario scenario, LoadPlan best, long momentGMm) {
    AssertedSearch.judged(scenario, best);
    Bound floor = Floor.of(Loading.of(scenario, best), Floor.USUAL_ITERATIONS);
    double momentNm = Lever.newtonMetres(2L * momentGMm, Lever.STANDARD_GRAVITY_M_S2);
    assertThat(floor.floorNm() - floor.fixedNm()).isLessThanOrEqualTo(momentNm);
  }

  /** Starts from nothing with moments compared in tenths of a newton metre. */
  private static LoadPlan search(Scenario scenario, long seed) {
    LoadPlan.Origin finest =
        new LoadPlan.Origin(
            "hand", OptionalLong.empty(), OptionalLong.empty(), OptionalLong.of(1L));
    LoadPlan nothing = new LoadPlan(scenario.id(), Map.of(), List.of(), finest);
    PlanSearch.Request request = new PlanSearch.Request(scenario, seed, STEPS, 0.0, 1);
    return PlanSearch.solve(request.from(nothing), best -> {}, () -> false).plan();
  }

  private static Case judged(Scenario scenario, LoadPlan plan, ExactAssignment.Optimum optimum) {
    AssertedSearch.judged(scenario, plan);
    long value = 0L;
    long moment = 0L;
    for (PlacedItem item : Loading.of(scenario, plan).placed().values()) {
      value += item.item().value();
      moment += item.item().mass().massG() * Cubes.behindMm(item.box().minXMm());
    }
    return new Case(value, moment, optimum.value(), optimum.cost());
  }
}
