package kitstow.planner.solver;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * The shipped scenarios and twenty generated rigs, which are shipped ones with other gear, each
 * searched with a few seeds, two searches side by side, by the processor time of each: quality over
 * time, and how soon a run is near the best of all. {@code -Dkitstow.seeds=N}, {@code
 * -Dkitstow.seconds=N} and {@code -Dkitstow.rigs=N} change how many; {@code -Dkitstow.longer=N}
 * lets as many searches of a minute each have a say in what is best, and {@code
 * -Dkitstow.bests=FILE} what runs of other days have found, for which what these find is kept
 * there; {@code -Dkitstow.crowded=N} adds generated scenarios with about twice as much gear as goes
 * in.
 */
@Tag("quality")
class QualityBench {
  private static final int SEEDS = Integer.getInteger("kitstow.seeds", 2);
  private static final int SECONDS = Integer.getInteger("kitstow.seconds", 30);
  private static final int RIGS = Integer.getInteger("kitstow.rigs", 20);
  private static final int CROWDED = Integer.getInteger("kitstow.crowded", 0);
  private static final int LONGER = Integer.getInteger("kitstow.longer", 0);
  private static final double LONGER_SECONDS = 60.0;
  private static final @Nullable String BESTS = System.getProperty("kitstow.bests");
  private static final int SIDE_BY_SIDE = 2;

  @Test
  void runsAreNearTheBestSoon() throws InterruptedException, ExecutionException {
    KnownBests known = new KnownBests(BESTS == null ? null : Path.of(BESTS));
    List<RigQuality> rigs = new ArrayList<>();
    for (BenchRig rig : BenchRig.all(RIGS, CROWDED)) {
      rigs.add(new RigQuality(rig, SECONDS, known));
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
      rig.remember();
    }
    threads.shutdown();
    times.sort(Comparator.naturalOrder());
    System.out.printf(
        Locale.ROOT,
        "median time to within 1 %% of the best of %d runs of %d s, %d of a minute%s: %.1f s;"
            + " %d of %d runs never%n",
        SEEDS,
        SECONDS,
        LONGER,
        BESTS == null ? "" : " and those of other days",
        RigQuality.median(times),
        times.stream().filter(time -> time >= SECONDS).count(),
        times.size());
    assertThat(times).hasSize(rigs.size() * SEEDS);
  }
}
