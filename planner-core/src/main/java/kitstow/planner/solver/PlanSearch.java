package kitstow.planner.solver;

import java.util.Optional;
import java.util.Random;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.BooleanSupplier;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Scenario;
import kitstow.planner.statics.Lever;
import org.jspecify.annotations.Nullable;

/**
 * Searches for a plan: trade-wise construction with restarts, then local search, on one or more
 * seeds at once. The same seeds and number of steps give the same plan, however many threads work
 * on them; a time limit does not.
 */
public final class PlanSearch {
  private static final double LEAST_STEP_NM = 5.0;
  private static final double STEP_SHARE = 0.002;

  /**
   * What is asked.
   *
   * @param scenario scenario
   * @param start a plan to go on from; without one the search packs from nothing
   * @param seed random seed of the first search; further ones use the seeds after it
   * @param seeds number of searches; the best plan of all is taken
   * @param steps steps of each search, or 0 for no limit
   * @param seconds time limit of them all, or 0 for none; one of the two limits must be given
   * @param threads searches run side by side; more run in turns, each for its share of the time
   */
  public record Request(
      Scenario scenario,
      Optional<LoadPlan> start,
      long seed,
      int seeds,
      long steps,
      double seconds,
      int threads) {
    /** Refuses a search without end. */
    public Request {
      if (steps <= 0L && seconds <= 0.0) {
        throw new IllegalArgumentException("a search needs a limit in steps or seconds");
      }
      if (threads < 1) {
        throw new IllegalArgumentException("threads must be 1 or more: " + threads);
      }
      if (seeds < 1) {
        throw new IllegalArgumentException("seeds must be 1 or more: " + seeds);
      }
    }

    /** A search from nothing with as many seeds as threads. */
    public Request(Scenario scenario, long seed, long steps, double seconds, int threads) {
      this(scenario, Optional.empty(), seed, threads, steps, seconds, threads);
    }

    /** The same search for another time. */
    Request lasting(double other) {
      return new Request(scenario, start, seed, seeds, steps, other, threads);
    }

    /** The same search going on from a plan. */
    public Request from(LoadPlan plan) {
      return new Request(scenario, Optional.of(plan), seed, seeds, steps, seconds, threads);
    }
  }

  /**
   * What is found so far.
   *
   * @param plan the plan
   * @param momentNm worst moving rear overhang moment
   * @param unitsHome units that stay home
   * @param scoreCalculations plans scored until now by the search that found it; at the end by all
   */
  public record Best(LoadPlan plan, double momentNm, int unitsHome, long scoreCalculations) {}

  /**
   * Told of every better plan, from the searching threads, and of the best of all at the end, with
   * all plans that were scored.
   */
  public interface Progress {
    /** A better plan was found, or the search has ended with this one. */
    void better(Best best);
  }

  private PlanSearch() {}

  /**
   * Searches until a limit is reached or it is cancelled.
   *
   * @param cancelled asked a few times a second
   * @return the best plan of all seeds; ties go to the lowest seed
   */
  public static Best solve(Request request, Progress progress, BooleanSupplier cancelled) {
    ExecutorService pool = Executors.newFixedThreadPool(request.threads());
    try {
      Best best = Searches.begin(request, progress, pool).best(cancelled);
      progress.better(best);
      return best;
    } finally {
      pool.shutdownNow();
    }
  }

  /**
   * The first packing of a search; fixes the step in which moments are compared.
   *
   * @param start a plan to go on from
   */
  static PlanningLoad construct(PackingProblem problem, @Nullable LoadPlan start) {
    Packing packing = new Packing(problem, PackingProblem.firstBays(problem.scenario()));
    new Construction(problem).packAll(packing, new Random(0L), /* noise= */ 0.0);
    double momentNm = Lever.newtonMetres(packing.momentHalfGMm(), Lever.STANDARD_GRAVITY_M_S2);
    problem.stepNm(Math.max(LEAST_STEP_NM, Math.rint(momentNm * STEP_SHARE * 10.0) / 10.0));
    if (start != null) {
      start
          .origin()
          .momentStepDeciNm()
          .ifPresent(step -> problem.stepNm(Math.max(0.1, step / 10.0)));
      packing = PlanningMapper.toPacking(problem, start);
    }
    return PlanningMapper.toPlanning(problem, packing);
  }
}
