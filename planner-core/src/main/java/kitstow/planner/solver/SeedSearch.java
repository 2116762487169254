package kitstow.planner.solver;

import java.util.Random;
import java.util.concurrent.Callable;
import java.util.function.LongSupplier;
import kitstow.planner.model.Settings;
import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.score.buildin.bendablelong.BendableLongScore;
import org.optaplanner.core.api.solver.SolverFactory;
import org.optaplanner.core.impl.localsearch.scope.LocalSearchStepScope;
import org.optaplanner.core.impl.phase.event.PhaseLifecycleListenerAdapter;
import org.optaplanner.core.impl.phase.scope.AbstractStepScope;
import org.optaplanner.core.impl.solver.DefaultSolver;

/** One search with one seed, round after round, to be run in a thread of its own. */
final class SeedSearch implements Callable<PlanningLoad> {
  /** Every so many rounds start from nothing. */
  private static final int AFRESH = 4;

  private final PlanSearch.Request request;
  private final long seed;
  private final PlanSearch.Progress progress;
  private final LongSupplier nanos;
  private volatile boolean stopped;
  private volatile @Nullable DefaultSolver<PlanningLoad> solver;
  private volatile long scoreCalculations;
  private @Nullable PlanningLoad best;
  private @Nullable BendableLongScore bestScore;

  /**
   * A search.
   *
   * @param nanos clock by which its time goes, ns from whenever; asked in the thread that searches
   */
  SeedSearch(
      PlanSearch.Request request, long seed, PlanSearch.Progress progress, LongSupplier nanos) {
    this.request = request;
    this.seed = seed;
    this.progress = progress;
    this.nanos = nanos;
  }

  @Override
  public PlanningLoad call() {
    PackingProblem problem = new PackingProblem(request.scenario());
    PlanningLoad first = PlanSearch.construct(problem, request.start().orElse(null));
    offer(first, scoreOf(first));
    progress.better(PlanningMapper.toBest(first, seed, request.steps(), 1L));
    Budget budget = new Budget(seed, request.steps(), request.seconds(), nanos);
    Random random = new Random(seed);
    int[] urgency = new int[problem.units().size()];
    NearFloor nearFloor = new NearFloor(request.scenario());
    boolean filled = false;
    int fillings = 0;
    long taken;
    do {
      Round round = budget.next(leavesHome(best()), filled);
      BendableLongScore bar = scoreOf(best());
      boolean fills = round.aim().fills();
      boolean settles = fills ? fillings++ % 2 == 0 : filled;
      PlanningLoad start =
          settles ? best() : startOf(budget.rounds(), best(), random, urgency, fills);
      StepCount counted = new StepCount();
      PlanningLoad found = run(start, round, counted);
      if (round.aim() == Aim.FINE && mayBeBest(found)) {
        found = run(found, budget.settling(counted.steps), counted);
      }
      taken = counted.steps;
      budget.spend(taken);
      countHome(found, urgency);
      offer(found, scoreOf(found));
      filled = fills && scoreOf(best()).compareTo(bar) > 0;
    } while (taken > 0L
        && !stopped
        && !budget.spent()
        && (filled || !nearFloor.holds(packingOf(best()))));
    PlanningLoad found = best();
    // The round that found it may have counted otherwise.
    found.setScore(scoreOf(found));
    return found;
  }

  private PlanningLoad best() {
    PlanningLoad now = best;
    if (now == null) {
      throw new IllegalStateException("nothing is packed yet");
    }
    return now;
  }

  /** Takes a plan for the best if it is better than all before it; tells whether it is. */
  private boolean offer(PlanningLoad found, BendableLongScore score) {
    BendableLongScore bar = bestScore;
    boolean better = bar == null || score.compareTo(bar) > 0;
    if (better) {
      best = found;
      bestScore = score;
    }
    return better;
  }

  /** Whether a plan is no worse than the best but perhaps for its handling. */
  private boolean mayBeBest(PlanningLoad found) {
    Settings.MassLimits massLimits = request.scenario().settings().massLimits();
    ScoreLevels now = packingOf(best()).levels();
    ScoreLevels then = packingOf(found).levels();
    return then.butHandling().toScore(massLimits).compareTo(now.butHandling().toScore(massLimits))
        >= 0;
  }

  /** The score with everything counted. */
  private static BendableLongScore scoreOf(PlanningLoad load) {
    return packingOf(load).levels().toScore(load.problem().scenario().settings().massLimits());
  }

  private static Packing packingOf(PlanningLoad load) {
    Packing packing = new Packing(load.problem(), PackingScore.baysOf(load));
    packing.follow(load);
    return packing;
  }

  /** Whether anything is home that ought to be aboard whatever the moment. */
  private static boolean leavesHome(PlanningLoad load) {
    Packing packing = packingOf(load);
    return load.problem().scenario().settings().massLimits() == Settings.MassLimits.KEEP
        ? packing.placed().size() < load.items().size()
        : packing.levels().mustLeft() > 0L;
  }

  private static void countHome(PlanningLoad load, int[] urgency) {
    Packing packing = packingOf(load);
    for (int unit = 0; unit < urgency.length; unit++) {
      urgency[unit] += packing.placeOf(unit) == null ? 1 : 0;
    }
  }

  /** The best itself at first, then plans near it, and now and then one that owes it nothing. */
  private static PlanningLoad startOf(
      int round, PlanningLoad best, Random random, int[] urgency, boolean filling) {
    if (round <= 2 && !filling) {
      return best;
    }
    return filling || round % AFRESH == 0
        ? Shake.afresh(best, random, urgency)
        : Shake.of(best, random);
  }

  private PlanningLoad run(PlanningLoad start, Round round, StepCount counted) {
    DefaultSolver<PlanningLoad> built =
        (DefaultSolver<PlanningLoad>)
            SolverFactory.<PlanningLoad>create(SearchConfig.of(request.scenario(), round))
                .buildSolver();
    long before = scoreCalculations;
    built.addPhaseLifecycleListener(counted);
    built.addEventListener(
        event -> tell(event.getNewBestSolution(), round, before + calculationsOf(built)));
    solver = built;
    if (stopped || round.steps() == 0L) {
      return start;
    }
    start.problem().aim(round.aim());
    PlanningLoad found = built.solve(start);
    start.problem().aim(Aim.ALL);
    scoreCalculations = before + calculationsOf(built);
    return found;
  }

  /** Tells of a plan if it is better than all before it in this search. */
  private void tell(PlanningLoad found, Round round, long calculations) {
    if (round.aim() == Aim.FINE && !isStep(found)) {
      return;
    }
    if (offer(found, scoreOf(found))) {
      progress.better(PlanningMapper.toBest(found, seed, request.steps(), calculations));
    }
  }

  /** Whether what was found with fine steps is better by a whole one. */
  private boolean isStep(PlanningLoad found) {
    BendableLongScore fine = found.score();
    BendableLongScore bar = bestScore;
    return fine == null || bar == null || ScoreLevels.isBetterByStep(fine, bar);
  }

  private static long calculationsOf(DefaultSolver<PlanningLoad> of) {
    return of.getSolverScope().getScoreCalculationCount();
  }

  /** Ends the search with what it has, in whatever round it is. */
  void stop() {
    stopped = true;
    DefaultSolver<PlanningLoad> now = solver;
    if (now != null) {
      now.terminateEarly();
    }
  }

  /** Plans scored, once the search has ended. */
  long scoreCalculations() {
    return scoreCalculations;
  }

  /** Counts the steps of local search. */
  private static final class StepCount extends PhaseLifecycleListenerAdapter<PlanningLoad> {
    private long steps;

    @Override
    public void stepEnded(AbstractStepScope<PlanningLoad> stepScope) {
      if (stepScope instanceof LocalSearchStepScope) {
        steps++;
      }
    }
  }
}
