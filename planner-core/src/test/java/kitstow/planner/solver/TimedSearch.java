package kitstow.planner.solver;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Predicate;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Scenario;

/**
 * One search on one thread with all its better plans, and the processor time which that thread had
 * used when it found each. It goes by processor time too, so what else the machine does matters
 * little.
 */
final class TimedSearch {
  private static final long POLL_MS = 20L;

  private record Found(double atSeconds, PlanSearch.Best best) {}

  private final List<Found> trace = Collections.synchronizedList(new ArrayList<>());

  private TimedSearch() {}

  /** Searches for so many seconds of processor time. */
  static TimedSearch of(Scenario scenario, long seed, double seconds) {
    return of(scenario, seed, seconds, /* fillsSpaces= */ true);
  }

  /**
   * The same with or without whole spaces filled anew.
   *
   * @param fillsSpaces whether they are
   */
  static TimedSearch of(Scenario scenario, long seed, double seconds, boolean fillsSpaces) {
    TimedSearch timed = new TimedSearch();
    ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    SeedSearch search =
        new SeedSearch(
            new PlanSearch.Request(scenario, seed, /* steps= */ 0L, seconds, /* threads= */ 1),
            seed,
            best -> timed.trace.add(new Found(threads.getCurrentThreadCpuTime() / 1.0e9, best)),
            threads::getCurrentThreadCpuTime,
            fillsSpaces);
    FutureTask<PlanningLoad> task = new FutureTask<>(search);
    Thread thread = new Thread(task, "timed search");
    thread.start();
    try {
      while (!task.isDone()) {
        Thread.sleep(POLL_MS);
        if (threads.getThreadCpuTime(thread.getId()) / 1.0e9 >= seconds) {
          search.stop();
        }
      }
      PlanSearch.Best last =
          PlanningMapper.toBest(task.get(), seed, 0L, search.scoreCalculations());
      timed.trace.add(new Found(seconds, last));
    } catch (InterruptedException e) {
      search.stop();
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted", e);
    } catch (ExecutionException e) {
      throw new IllegalStateException("the search failed", e.getCause());
    }
    return timed;
  }

  /** The best plan after so many seconds, if there was any. */
  Optional<LoadPlan> at(double seconds) {
    Optional<LoadPlan> plan = Optional.empty();
    for (Found found : trace) {
      plan = found.atSeconds() <= seconds ? Optional.of(found.best().plan()) : plan;
    }
    return plan;
  }

  /** After how many seconds there first was a plan of some kind, if ever. */
  OptionalDouble firstAt(Predicate<LoadPlan> kind) {
    return trace.stream()
        .filter(found -> kind.test(found.best().plan()))
        .mapToDouble(Found::atSeconds)
        .findFirst();
  }

  /** The best plan of all. */
  LoadPlan last() {
    return trace.get(trace.size() - 1).best().plan();
  }

  /** Plans scored. */
  long scoreCalculations() {
    return trace.get(trace.size() - 1).best().scoreCalculations();
  }
}
