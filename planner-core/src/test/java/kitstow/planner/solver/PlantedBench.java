package kitstow.planner.solver;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Optional;
import kitstow.planner.generated.PlantedRig;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Loading;
import kitstow.planner.statics.Bound;
import kitstow.planner.statics.Lever;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * How far the search is above plans that are known beforehand, three sizes by three fills by three
 * seeds, in ten seconds of processor time on one thread. Moments of the gear alone: what is fixed
 * does not water the figures down.
 */
@Tag("planted")
class PlantedBench {
  private static final int[] BOXES = {40, 68, 100};
  private static final double[] FILLS = {0.45, 0.6, 0.75};
  private static final int SEEDS = 3;
  private static final double SECONDS = 10.0;

  @Test
  void theSearchIsSetBesidePlantedPlans() {
    System.out.println("| Boxes | fill % | planted N·m | floor below % | 10 s above %, by seed |");
    System.out.println("|---|---|---|---|---|");
    double sum = 0.0;
    double worst = 0.0;
    int complete = 0;
    for (int boxes : BOXES) {
      for (double fill : FILLS) {
        StringBuilder cells = new StringBuilder();
        double plantedSum = 0.0;
        double floorBelow = 0.0;
        for (int seed = 1; seed <= SEEDS; seed++) {
          PlantedRig rig = PlantedRig.of(boxes, fill, seed);
          Bound floor = Floor.of(Loading.of(rig.scenario(), rig.plan()), Floor.USUAL_ITERATIONS);
          double planted = gearNm(rig, rig.plan(), floor);
          assertThat(floor.floorNm() - floor.fixedNm()).isLessThanOrEqualTo(planted + 1.0e-6);
          plantedSum += planted / SEEDS;
          floorBelow += (1.0 - (floor.floorNm() - floor.fixedNm()) / planted) * 100.0 / SEEDS;
          Optional<Double> above = above(rig, planted, floor, seed);
          cells.append(
              above.map(value -> String.format(Locale.ROOT, " %.1f", value)).orElse(" home"));
          if (above.isPresent()) {
            complete++;
            sum += above.get();
            worst = Math.max(worst, above.get());
          }
        }
        System.out.printf(
            Locale.ROOT,
            "| %d | %.0f | %.0f | %.1f |%s |%n",
            boxes,
            100.0 * fill,
            plantedSum,
            floorBelow,
            cells);
      }
    }
    System.out.printf(
        Locale.ROOT,
        "complete %d of %d; above the planted plan: mean %.1f %%, worst %.1f %%%n",
        complete,
        BOXES.length * FILLS.length * SEEDS,
        sum / Math.max(1, complete),
        worst);
    assertThat(complete).isPositive();
  }

  /** By how many percent the found plan is above the planted one; nothing if it leaves any home. */
  private static Optional<Double> above(PlantedRig rig, double planted, Bound floor, long seed) {
    LoadPlan found = TimedSearch.of(rig.scenario(), seed, SECONDS).last();
    AssertedSearch.judged(rig.scenario(), found);
    return found.placements().size() == rig.plan().placements().size()
        ? Optional.of((gearNm(rig, found, floor) / planted - 1.0) * 100.0)
        : Optional.empty();
  }

  /** The moment of the gear alone. */
  static double gearNm(PlantedRig rig, LoadPlan plan, Bound floor) {
    return Lever.newtonMetres(
            PlainScore.worstMomentHalfGMm(rig.scenario(), plan), Lever.STANDARD_GRAVITY_M_S2)
        - floor.fixedNm();
  }
}
