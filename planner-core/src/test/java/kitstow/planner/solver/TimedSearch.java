package kitstow.planner.solver;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Scenario;

/**
 * One search on one thread with all its better plans, and the processor time which that thread had
 * used when it found each: so what else the machine does matters little.
 */
final class TimedSearch {
  /** By the clock; far more than a bench takes unless the machine is very busy. */
  private static final double MOST_SECONDS = 1_200.0;

  private record Found(double atSeconds, PlanSearch.Best best) {}

  private final List<Found> trace = Collections.synchronizedList(new ArrayList<>());

  private TimedSearch() {}

  /** Searches for so many seconds of processor time. */
  static TimedSearch of(Scenario scenario, long seed, double seconds) {
    TimedSearch search = new TimedSearch();
    ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    AtomicLong thread = new AtomicLong();
    PlanSearch.solve(
        new PlanSearch.Request(scenario, seed, /* steps= */ 0L, MOST_SECONDS, /* threads= */ 1),
        best -> {
          thread.set(Thread.currentThread().getId());
          search.trace.add(new Found(threads.getCurrentThreadCpuTime() / 1.0e9, best));
        },
        () -> thread.get() != 0L && threads.getThreadCpuTime(thread.get()) / 1.0e9 >= seconds);
    return search;
  }

  /** The best plan after so many seconds, if there was any. */
  Optional<LoadPlan> at(double seconds) {
    Optional<LoadPlan> plan = Optional.empty();
    for (Found found : trace) {
      plan = found.atSeconds() <= seconds ? Optional.of(found.best().plan()) : plan;
    }
    return plan;
  }

  /** The best plan of all. */
  LoadPlan last() {
    return trace.get(trace.size() - 1).best().plan();
  }
}
