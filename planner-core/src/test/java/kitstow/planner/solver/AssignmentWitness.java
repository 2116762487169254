package kitstow.planner.solver;

import static kitstow.planner.testkit.ItemBuilder.anItem;
import static kitstow.planner.testkit.SpaceBuilder.aSpace;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Random;
import java.util.stream.IntStream;
import kitstow.planner.exact.ExactAssignment;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.geometry.Turn;
import kitstow.planner.model.Leg;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.Surface;
import kitstow.planner.testkit.Masses;
import kitstow.planner.testkit.RigBuilder;

/**
 * Up to twelve cubes and six spaces one cube long, each with a rating: the search against the
 * proved optimum, most value first and then least moment. The ratings together are 0.8, 1.0 or 1.3
 * times what the cubes weigh.
 */
final class AssignmentWitness {
  private static final long STEPS = 16_000;
  private static final int CUBE_MM = 100;
  private static final int WHEELBASE_MM = 3000;
  private static final double[] TIGHTNESS = {0.8, 1.0, 1.3};

  /** Front ends of the spaces in the canopy's frame, which starts at x 2000. */
  private static final int[] FROM_FRONT_MM = {100, 500, 1000, 1150, 1400, 1650};

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

  private static Case solveOne(int number) {
    Random random = new Random(4099L * number + 7L);
    int cubes = 7 + random.nextInt(6);
    long[] massG = new long[cubes];
    int[] worth = new int[cubes];
    long totalG = 0L;
    for (int i = 0; i < cubes; i++) {
      massG[i] = 2_000L + random.nextInt(28_000);
      worth[i] = 1 + random.nextInt(50);
      totalG += massG[i];
    }
    long[] ratingG = new long[FROM_FRONT_MM.length];
    for (int k = 0; k < ratingG.length; k++) {
      double share = TIGHTNESS[number % TIGHTNESS.length] / ratingG.length;
      ratingG[k] = Math.round(totalG * share * (0.5 + random.nextDouble()));
    }
    LoadPlan plan = search(scenario(massG, worth, ratingG), number);
    return judged(scenario(massG, worth, ratingG), plan, optimum(massG, worth, ratingG));
  }

  private static Scenario scenario(long[] massG, int[] worth, long[] ratingG) {
    RigBuilder rig =
        RigBuilder.aBareDualCab()
            .person("driver", Masses.kg(90), "driver")
            .legs(
                new Leg(
                    "out",
                    "Out",
                    /* distanceKm= */ 10.0,
                    /* days= */ 1.0,
                    Surface.ROAD,
                    /* trailerId= */ Optional.empty(),
                    /* wet= */ false,
                    List.of(),
                    /* emptyRubbish= */ false));
    SizeMm size = new SizeMm(CUBE_MM, 1300, CUBE_MM);
    for (int k = 0; k < ratingG.length; k++) {
      rig.canopySpace(
          aSpace("space-" + k, FROM_FRONT_MM[k], -650, 0, size).ratings(Masses.always(ratingG[k])));
    }
    for (int i = 0; i < massG.length; i++) {
      rig.items(
          anItem("cube-" + i)
              .size(CUBE_MM, CUBE_MM, CUBE_MM)
              .massG(massG[i])
              .bearsG(0L)
              .turns(Turn.LWH)
              .value(worth[i]));
    }
    return rig.scenario();
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

  private static ExactAssignment.Optimum optimum(long[] massG, int[] worth, long[] ratingG) {
    int spaces = ratingG.length;
    long[][] value = new long[massG.length][spaces];
    long[][] mass = new long[massG.length][spaces];
    long[][] moment = new long[massG.length][spaces];
    for (int i = 0; i < massG.length; i++) {
      for (int k = 0; k < spaces; k++) {
        value[i][k] = worth[i];
        mass[i][k] = massG[i];
        moment[i][k] = massG[i] * behindMm(2000 + FROM_FRONT_MM[k]);
      }
    }
    return ExactAssignment.solve(value, mass, moment, ratingG);
  }

  /** How far behind the rear axle the middle of a cube is; none lies across the line. */
  private static long behindMm(int frontXMm) {
    return Math.max(0, frontXMm + CUBE_MM / 2 - WHEELBASE_MM)
        * (frontXMm >= WHEELBASE_MM ? 1L : 0L);
  }

  private static Case judged(Scenario scenario, LoadPlan plan, ExactAssignment.Optimum optimum) {
    AssertedSearch.judged(scenario, plan);
    long value = 0L;
    long moment = 0L;
    for (PlacedItem item : Loading.of(scenario, plan).placed().values()) {
      value += item.item().value();
      moment += item.item().mass().massG() * behindMm(item.box().minXMm());
    }
    return new Case(value, moment, optimum.value(), optimum.cost());
  }
}
