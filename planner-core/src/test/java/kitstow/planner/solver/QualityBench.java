package kitstow.planner.solver;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import kitstow.planner.generated.GeneratedScenarios;
import kitstow.planner.generated.OtherGear;
import kitstow.planner.model.Scenario;
import kitstow.planner.scenarios.ShippedFiles;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * The shipped scenarios and twenty generated rigs, which are shipped ones with other gear, each
 * searched with a few seeds, two searches side by side, by the processor time of each: quality over
 * time, how soon a run is near the best of all, and how far the floor is below the best, with what
 * each part of the floor adds. {@code -Dkitstow.seeds=N}, {@code -Dkitstow.seconds=N} and {@code
 * -Dkitstow.rigs=N} change how many; {@code -Dkitstow.longer=N} lets as many searches of a minute
 * each have a say in what is best; {@code -Dkitstow.crowded=N} adds generated scenarios with about
 * twice as much gear as goes in.
 */
@Tag("quality")
class QualityBench {
  private static final int SEEDS = Integer.getInteger("kitstow.seeds", 2);
  private static final int SECONDS = Integer.getInteger("kitstow.seconds", 30);
  private static final int RIGS = Integer.getInteger("kitstow.rigs", 20);
  private static final int CROWDED = Integer.getInteger("kitstow.crowded", 0);
  private static final int LONGER = Integer.getInteger("kitstow.longer", 0);
  private static final double LONGER_SECONDS = 60.0;
  private static final int SIDE_BY_SIDE = 2;

  /** Rigs into which nearly all of their gear goes. */
  private static final List<String> BASES =
      List.of(
          "counter-1500", "counter-1700", "remote-fortnight", "towing-week", "workshop-drawers");

  /** Steps through the larger of the generated scenarios, without a divisor of their number. */
  private static final int STRIDE = 37;

  @Test
  void runsAreNearTheBestSoon() throws InterruptedException, ExecutionException {
    List<RigQuality> rigs = new ArrayList<>();
    for (String name : ShippedFiles.scenarioNames()) {
      rigs.add(new RigQuality(name, ShippedFiles.scenario(name), SECONDS));
    }
    for (int i = 0; i < RIGS; i++) {
      String base = BASES.get(i % BASES.size());
      Scenario scenario = OtherGear.of(ShippedFiles.scenario(base), i);
      rigs.add(new RigQuality(base + ", gear " + i, scenario, SECONDS));
    }
    int larger = GeneratedScenarios.ALL - GeneratedScenarios.SMALL;
    for (int i = 0; i < CROWDED; i++) {
      int number = GeneratedScenarios.SMALL + i * STRIDE % larger;
      rigs.add(new RigQuality("generated " + number, GeneratedScenarios.of(number), SECONDS));
    }
    System.out.println(RigQuality.head());
    List<Double> times = new ArrayList<>();
    ExecutorService threads = Executors.newFixedThreadPool(SIDE_BY_SIDE);
    for (RigQuality rig : rigs) {
      List<Callable<Boolean>> runs = new ArrayList<>();
      for (long seed = 1L; seed <= SEEDS; seed++) {
        long own = seed;
        runs.add(
            () -> {
              rig.run(own);
              return true;
            });
      }
      for (long seed = 1L; seed <= LONGER; seed++) {
        long own = seed;
        runs.add(
            () -> {
              rig.runLonger(own, LONGER_SECONDS);
              return true;
            });
      }
      for (Future<Boolean> run : threads.invokeAll(runs)) {
        assertThat(run.get()).isTrue();
      }
      System.out.println(rig.row());
      times.addAll(rig.secondsToNear());
    }
    threads.shutdown();
    times.sort(Comparator.naturalOrder());
    System.out.printf(
        Locale.ROOT,
        "median time to within 1 %% of the best of %d runs of %d s and %d of a minute: %.1f s;"
            + " %d of %d runs never%n",
        SEEDS,
        SECONDS,
        LONGER,
        RigQuality.median(times),
        times.stream().filter(time -> time >= SECONDS).count(),
        times.size());
    assertThat(times).hasSize(rigs.size() * SEEDS);
  }
}
