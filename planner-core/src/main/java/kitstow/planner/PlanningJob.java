package kitstow.planner;

import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicBoolean;
import kitstow.planner.report.CheckReport;
import kitstow.planner.solver.PlanSearch;

/**
 * A search for a plan beside whatever else an app does: it can be watched and stopped, and the plan
 * it has so far can be kept. A job has no state beyond that plan; whoever writes the plan down can
 * start another job from it, in another process too.
 */
public final class PlanningJob {
  private final AtomicBoolean stopped = new AtomicBoolean();
  private final CompletableFuture<CheckReport> report;
  private volatile Optional<PlanSearch.Best> best = Optional.empty();

  private PlanningJob(PlanSearch.Request request, Executor executor, PlanSearch.Progress progress) {
    PlanSearch.Progress keeping =
        better -> {
          best = Optional.of(better);
          progress.better(better);
        };
    report =
        CompletableFuture.supplyAsync(
            () -> LoadPlanner.plan(request, keeping, stopped::get), executor);
  }

  /**
   * Starts a job.
   *
   * @param request scenario, seed and limits
   * @param executor runs the job on a thread of its own, never on one that draws the screen
   * @param progress told of every better plan, from the searching threads, which wait meanwhile
   */
  public static PlanningJob start(
      PlanSearch.Request request, Executor executor, PlanSearch.Progress progress) {
    return new PlanningJob(request, executor, progress);
  }

  /**
   * Asks the search to end soon, with the best plan it has. May be called again and from anywhere.
   */
  public void stop() {
    stopped.set(true);
  }

  /**
   * The plan told of last, not judged yet; empty until there is one. With one seed it is the best
   * so far, with several the best of one of them.
   */
  public Optional<PlanSearch.Best> best() {
    return best;
  }

  /**
   * The judged plan, once the search has ended or was stopped. Fails with what {@link
   * LoadPlanner#plan} throws; what hangs on it runs on the job's thread unless told otherwise.
   */
  public CompletionStage<CheckReport> report() {
    return report;
  }
}
