package kitstow.planner.solver;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Loading;
import kitstow.planner.statics.Bound;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * How far the floor is below the plan of one search on the shipped scenarios and on twenty with
 * other gear, of the whole moment and of what the place of gear can change, and what each part of
 * the floor adds; and the floor beside a thousand proved optima. {@code -Dkitstow.seconds=N} and
 * {@code -Dkitstow.rigs=N} change how long and how many.
 */
@Tag("floor")
class FloorBench {
  private static final int SECONDS = Integer.getInteger("kitstow.seconds", 10);
  private static final int RIGS = Integer.getInteger("kitstow.rigs", 20);
  private static final int SIDE_BY_SIDE = 2;
  private static final String HEAD =
      "| Rig | units | aboard | moment N·m | of gear N·m | gap of whole % | of gear % | counting %"
          + " | whole % | alone % | limits % |\n"
          + "|---|---|---|---|---|---|---|---|---|---|---|";

  private static final int PROVED = 1000;

  /** A row of the table, and the floor it is about. */
  private record Row(String text, Bound floor) {}

  @Test
  void theFloorIsAboveNoProvedOptimum() {
    AssignmentWitness.assertFloorsAreTrue(PROVED);
  }

  @Test
  void theFloorIsBelowThePlanOfEveryRig() throws InterruptedException, ExecutionException {
    List<Callable<Row>> runs = new ArrayList<>();
    for (BenchRig rig : BenchRig.all(RIGS, /* crowded= */ 0)) {
      runs.add(() -> row(rig));
    }
    System.out.println(HEAD);
    ExecutorService threads = Executors.newFixedThreadPool(SIDE_BY_SIDE);
    for (Future<Row> run : threads.invokeAll(runs)) {
      Row row = run.get();
      System.out.println(row.text());
      assertThat(row.floor().floorNm()).isLessThanOrEqualTo(row.floor().momentNm());
    }
    threads.shutdown();
  }

  private static Row row(BenchRig rig) {
    LoadPlan plan = TimedSearch.of(rig.scenario(), /* seed= */ 1L, SECONDS).last();
    AssertedSearch.judged(rig.scenario(), plan);
    Loading loading = Loading.of(rig.scenario(), plan);
    Bound floor = Floor.of(loading, Floor.USUAL_ITERATIONS);
    double gearNm = floor.momentNm() - floor.fixedNm();
    StringBuilder row =
        new StringBuilder(
            String.format(
                Locale.ROOT,
                "| %s | %d | %d | %.0f | %.0f | %.1f | %.1f",
                rig.name(),
                new PackingProblem(rig.scenario()).units().size(),
                plan.placements().size(),
                floor.momentNm(),
                gearNm,
                floor.gapPercentOfWhole(),
                floor.gapPercentOfChangeable()));
    for (FloorFamily.Part part : FloorFamily.Part.values()) {
      Set<FloorFamily.Part> others = EnumSet.complementOf(EnumSet.of(part));
      Bound without = Floor.of(loading, Floor.USUAL_ITERATIONS, others);
      double share = gearNm > 0.0 ? 100.0 * (floor.floorNm() - without.floorNm()) / gearNm : 0.0;
      row.append(String.format(Locale.ROOT, " | %.1f", share));
    }
    return new Row(row + " |", floor);
  }
}
