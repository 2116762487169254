package kitstow.planner.solver;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * The shipped scenarios and twenty generated rigs, which are shipped ones with other gear, each
 * searched once, two searches side by side, by the processor time of each: quality over time, and
 * how soon a run is near the best that any run of any day has found. {@code -Dkitstow.seeds=N},
 * {@code -Dkitstow.seconds=N} and {@code -Dkitstow.rigs=N} change how many, {@code
 * -Dkitstow.seed=N} which; {@code -Dkitstow.longer=N} lets as many searches of a minute each have a
 * say in what is best; what is better than all before is kept in {@code -Dkitstow.bests=FILE} and
 * counts from then on; {@code -Dkitstow.crowded=N} adds generated scenarios with about twice as
 * much gear as goes in.
 */
@Tag("quality")
class QualityBench {
  private static final int SEEDS = Integer.getInteger("kitstow.seeds", 1);
  private static final long FIRST_SEED = Long.getLong("kitstow.seed", 1L);
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
    List<List<Future<?>>> runs = new ArrayList<>();
    for (RigQuality rig : rigs) {
      runs.add(started(rig, threads));
    }
    for (int i = 0; i < rigs.size(); i++) {
      for (Future<?> run : runs.get(i)) {
        run.get();
      }
      RigQuality rig = rigs.get(i);
      System.out.println(rig.row());
      times.addAll(rig.secondsToNear());
      rig.remember();
    }
    threads.shutdown();
    times.sort(Comparator.naturalOrder());
    System.out.printf(
        Locale.ROOT,
        "median time to within 1 %% of the best of all days: %.1f s; %d of %d runs of %d s never%n",
        RigQuality.median(times),
        times.stream().filter(time -> time >= SECONDS).count(),
        times.size(),
        SECONDS);
    assertThat(times).hasSize(rigs.size() * SEEDS);
  }

  private static List<Future<?>> started(RigQuality rig, ExecutorService threads) {
    List<Future<?>> runs = new ArrayList<>();
    for (long seed = FIRST_SEED; seed < FIRST_SEED + SEEDS; seed++) {
      long own = seed;
      runs.add(threads.submit(() -> rig.run(own)));
    }
    for (long seed = FIRST_SEED; seed < FIRST_SEED + LONGER; seed++) {
      long own = seed;
      runs.add(threads.submit(() -> rig.runLonger(own, LONGER_SECONDS)));
    }
    return runs;
  }
}
