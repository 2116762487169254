package kitstow.planner.solver;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import org.optaplanner.core.api.score.buildin.bendablelong.BendableLongScore;

/**
 * All searches of a request. With more seeds than threads they run in turns, each for its share of
 * the time.
 */
final class Searches {
  private static final long POLL_MS = 20L;
  private static final double NANOS = 1.0e9;

  private final PlanSearch.Request request;
  private final long deadlineNanos;
  private final double ownSeconds;
  private final List<SeedSearch> searches = new ArrayList<>();
  private final List<Future<PlanningLoad>> futures = new ArrayList<>();

  private Searches(PlanSearch.Request request) {
    this.request = request;
    this.deadlineNanos =
        request.seconds() > 0.0
            ? System.nanoTime() + (long) (request.seconds() * NANOS)
            : Long.MAX_VALUE;
    int turns = (request.seeds() + request.threads() - 1) / request.threads();
    this.ownSeconds = request.seconds() / turns;
  }

  /** Hands the searches of a request to threads. */
  static Searches begin(
      PlanSearch.Request request, PlanSearch.Progress progress, ExecutorService pool) {
    Searches all = new Searches(request);
    PlanSearch.Request own = request.lasting(all.ownSeconds);
    for (int i = 0; i < request.seeds(); i++) {
      SeedSearch search =
          new SeedSearch(
              own, request.seed() + i, progress, System::nanoTime, /* fillsSpaces= */ true);
      all.searches.add(search);
      all.futures.add(pool.submit(search));
    }
    return all;
  }

  /**
   * Waits for the best plan of all; ties go to the lowest seed.
   *
   * @param cancelled asked a few times a second
   */
  PlanSearch.Best best(BooleanSupplier cancelled) {
    PlanningLoad best = null;
    BendableLongScore bestScore = null;
    long bestSeed = request.seed();
    long calculations = 0L;
    for (int i = 0; i < futures.size(); i++) {
      Optional<PlanningLoad> found = await(i, cancelled);
      BendableLongScore score = found.isPresent() ? found.get().score() : null;
      calculations += searches.get(i).scoreCalculations();
      if (score != null && (bestScore == null || score.compareTo(bestScore) > 0)) {
        best = found.get();
        bestScore = score;
        bestSeed = request.seed() + i;
      }
    }
    if (best == null) {
      throw new IllegalStateException("the first search is never called off");
    }
    return PlanningMapper.toBest(best, bestSeed, request.steps(), calculations);
  }

  /** What a search has found; nothing where it was called off before it had begun. */
  private Optional<PlanningLoad> await(int which, BooleanSupplier cancelled) {
    while (true) {
      try {
        return Optional.of(futures.get(which).get(POLL_MS, TimeUnit.MILLISECONDS));
      } catch (TimeoutException e) {
        stopWhatIsDue(cancelled.getAsBoolean() || System.nanoTime() >= deadlineNanos);
      } catch (CancellationException e) {
        return Optional.empty();
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        searches.forEach(SeedSearch::stop);
        throw new IllegalStateException("interrupted while searching", e);
      } catch (ExecutionException e) {
        throw new IllegalStateException("the search failed", e.getCause());
      }
    }
  }

  /** Stops those whose time is up, or all; of these the first is let have at least some plan. */
  private void stopWhatIsDue(boolean all) {
    for (int i = 0; i < searches.size(); i++) {
      SeedSearch search = searches.get(i);
      if (all && i > 0 && !search.hasBegun()) {
        futures.get(i).cancel(/* mayInterruptIfRunning= */ false);
      }
      if (all || (ownSeconds > 0.0 && search.hasRunFor((long) (ownSeconds * NANOS)))) {
        search.stop();
      }
    }
  }
}
