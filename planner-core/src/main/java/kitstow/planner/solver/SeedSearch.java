package kitstow.planner.solver;

import java.util.Map;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.LongSupplier;
import kitstow.planner.model.Settings;
import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.score.buildin.bendablelong.BendableLongScore;
import org.optaplanner.core.api.solver.SolverFactory;
import org.optaplanner.core.impl.solver.DefaultSolver;

/** One search with one seed, round after round, to be run in a thread of its own. */
final class SeedSearch implements Callable<PlanningLoad> {
  /** Number of runs of all searches. */
  private static final AtomicLong RUNS = new AtomicLong();

  /** The best plan so far, and its score with everything counted. */
  private record Best(PlanningLoad load, BendableLongScore score) {}

  private final PlanSearch.Request request;
  private final long seed;
  private final PlanSearch.Progress progress;
  private final LongSupplier nanos;
  private final boolean fillsSpaces;
  private volatile boolean stopped;
  private volatile boolean begun;
  private volatile long begunNanos;
  private volatile @Nullable DefaultSolver<PlanningLoad> solver;
  private volatile long scoreCalculations;
  private final Elites elites = new Elites();
  private @Nullable Best best;

  /**
   * A search.
   *
   * @param nanos clock by which its time goes, ns from whenever; asked in the thread that searches
   * @param fillsSpaces whether whole spaces are filled anew, block by block
   */
  SeedSearch(
      PlanSearch.Request request,
      long seed,
      PlanSearch.Progress progress,
      LongSupplier nanos,
      boolean fillsSpaces) {
    this.fillsSpaces = fillsSpaces;
    this.request = request;
    this.seed = seed;
    this.progress = progress;
    this.nanos = nanos;
  }

  @Override
  public PlanningLoad call() {
    begunNanos = System.nanoTime();
    begun = true;
    PackingProblem problem = new PackingProblem(request.scenario());
    problem.fillsSpaces(fillsSpaces);
    PlanningLoad first = PlanSearch.construct(problem, request.start().orElse(null));
    offer(first);
    progress.better(PlanningMapper.toBest(first, seed, request.steps(), 1L));
    PlanningLoad elsewhere = BayTrials.best(first, new Random(seed), () -> stopped);
    int units = problem.units().size();
    if (units == 0) {
      // With bays alone no step need ever be taken: the solver waits for a move that is no worse.
      offer(elsewhere);
      return best().load();
    }
    Budget budget = new Budget(seed, units, request.steps(), request.seconds(), nanos);
    Random random = new Random(seed);
    int[] urgency = new int[units];
    NearFloor nearFloor = new NearFloor(request.scenario());
    boolean filled = false;
    long spentBefore;
    do {
      spentBefore = budget.stepsTaken();
      Best before = best();
      Round round = budget.next(leavesHome(before.load()), filled);
      PlanningLoad found = run(startOf(round, random, urgency), round, budget);
      countHome(found, urgency);
      offer(found);
      if (budget.rounds() == 1 && elsewhere != first) {
        // Which bays are better is told by what comes of them, not by how they begin.
        offer(run(elsewhere, budget.quickAgain(), budget));
        elsewhere = first;
      }
      filled = round.aim().fills() && best().score().compareTo(before.score()) > 0;
    } while (budget.stepsTaken() > spentBefore
        && !stopped
        && !budget.spent()
        && (filled || !nearFloor.holds(problem.packingOf(best().load()))));
    // The round that found it may have counted otherwise.
    best().load().setScore(best().score());
    return best().load();
  }

  private PlanningLoad startOf(Round round, Random random, int[] urgency) {
    PlanningLoad load = best().load();
    return switch (round.start()) {
      case BEST -> load;
      case HEATED -> Reheat.of(load, random, () -> stopped);
      case AFRESH -> Shake.afresh(load, random, urgency);
    };
  }

  private Best best() {
    Best now = best;
    if (now == null) {
      throw new IllegalStateException("nothing is packed yet");
    }
    return now;
  }

  /** Takes a plan for the best if it is better than all before it; tells whether it is. */
  private boolean offer(PlanningLoad found) {
    BendableLongScore score = scoreOf(found);
    Best now = best;
    boolean better = now == null || score.compareTo(now.score()) > 0;
    if (better) {
      best = new Best(found, score);
    }
    return better;
  }

  /** The score with everything counted. */
  private static BendableLongScore scoreOf(PlanningLoad load) {
    return load.problem().packingOf(load).score(Aim.ALL);
  }

  /** Whether anything is home that ought to be aboard whatever the moment. */
  private static boolean leavesHome(PlanningLoad load) {
    Packing packing = load.problem().packingOf(load);
    return load.problem().scenario().settings().massLimits() == Settings.MassLimits.KEEP
        ? packing.placed().size() < load.items().size()
        : packing.levels().mustLeft() > 0L;
  }

  private static void countHome(PlanningLoad load, int[] urgency) {
    Packing packing = load.problem().packingOf(load);
    for (int unit = 0; unit < urgency.length; unit++) {
      urgency[unit] += packing.placeOf(unit) == null ? 1 : 0;
    }
  }

  /** What a round makes of a plan; its steps are spent. */
  private PlanningLoad run(PlanningLoad start, Round round, Budget budget) {
    DefaultSolver<PlanningLoad> built =
        (DefaultSolver<PlanningLoad>)
            SolverFactory.<PlanningLoad>create(
                    SearchConfig.of(request.scenario(), round, () -> stopped))
                .buildSolver();
    long before = scoreCalculations;
    // Searches side by side would quarrel over the names of their meters, and say so to the user.
    built.setMonitorTagMap(Map.of("search", Long.toString(RUNS.incrementAndGet())));
    LateScores late = new LateScores(round.lateness());
    built.addPhaseLifecycleListener(late);
    built.addEventListener(
        event -> tell(event.getNewBestSolution(), before + calculationsOf(built)));
    solver = built;
    if (stopped || round.steps() == 0L) {
      return start;
    }
    start.problem().aim(round.aim());
    start.problem().late(late);
    start.problem().elites(round.crosses() ? elites : null);
    PlanningLoad found = built.solve(start);
    start.problem().aim(Aim.ALL);
    start.problem().late(null);
    start.problem().elites(null);
    if (!round.aim().fills()) {
      elites.add(found.problem().packingOf(found));
    }
    scoreCalculations = before + calculationsOf(built);
    budget.spend(round, late.steps());
    return found;
  }

  /** Tells of a plan if it is better than all before it in this search. */
  private void tell(PlanningLoad found, long calculations) {
    if (offer(found)) {
      progress.better(PlanningMapper.toBest(found, seed, request.steps(), calculations));
    }
  }

  private static long calculationsOf(DefaultSolver<PlanningLoad> of) {
    return of.getSolverScope().getScoreCalculationCount();
  }

  /** Whether a thread has come to it. */
  boolean hasBegun() {
    return begun;
  }

  /** Whether it has begun so long ago. */
  boolean hasRunFor(long sinceNanos) {
    return begun && System.nanoTime() - begunNanos >= sinceNanos;
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
}
