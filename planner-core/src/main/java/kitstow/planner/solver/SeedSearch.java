package kitstow.planner.solver;

import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.solver.Solver;
import org.optaplanner.core.api.solver.SolverFactory;
import org.optaplanner.core.impl.solver.DefaultSolver;

/** One search with one seed, to be run in a thread of its own. */
final class SeedSearch implements Callable<PlanningLoad> {
  private final PlanSearch.Request request;
  private final long seed;
  private final PlanSearch.Progress progress;
  private volatile boolean stopped;
  private volatile @Nullable Solver<PlanningLoad> solver;
  private volatile long scoreCalculations;

  SeedSearch(PlanSearch.Request request, long seed, PlanSearch.Progress progress) {
    this.request = request;
    this.seed = seed;
    this.progress = progress;
  }

  @Override
  public PlanningLoad call() {
    PackingProblem problem = new PackingProblem(request.scenario());
    PlanningLoad start = PlanSearch.construct(problem, request.start().orElse(null));
    progress.better(PlanningMapper.toBest(start, seed, request.steps(), 1L));
    Solver<PlanningLoad> built =
        SolverFactory.<PlanningLoad>create(
                SearchConfig.of(request.scenario(), seed, request.steps()))
            .buildSolver();
    built.addEventListener(
        event ->
            progress.better(
                PlanningMapper.toBest(
                    event.getNewBestSolution(), seed, request.steps(), calculationsOf(built))));
    solver = built;
    if (stopped) {
      built.terminateEarly();
    }
    PlanningLoad found = built.solve(start);
    scoreCalculations = calculationsOf(built);
    return found;
  }

  private static long calculationsOf(Solver<PlanningLoad> of) {
    return of instanceof DefaultSolver<PlanningLoad> known
        ? known.getSolverScope().getScoreCalculationCount()
        : 0L;
  }

  /** Ends the search with what it has, in whatever phase it is. */
  void stop() {
    stopped = true;
    Solver<PlanningLoad> now = solver;
    if (now != null) {
      now.terminateEarly();
    }
  }

  /** Plans scored, once the search has ended. */
  long scoreCalculations() {
    return scoreCalculations;
  }
}
