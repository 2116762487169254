package kitstow.planner.solver;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.ModuleChoice;
import kitstow.planner.model.Scenario;
import kitstow.planner.packing.Wanted;
import kitstow.planner.statics.Lever;
import org.optaplanner.core.api.domain.common.DomainAccessType;
import org.optaplanner.core.api.score.buildin.bendablelong.BendableLongScore;
import org.optaplanner.core.api.solver.Solver;
import org.optaplanner.core.api.solver.SolverFactory;
import org.optaplanner.core.config.heuristic.selector.entity.EntitySelectorConfig;
import org.optaplanner.core.config.heuristic.selector.move.MoveSelectorConfig;
import org.optaplanner.core.config.heuristic.selector.move.composite.UnionMoveSelectorConfig;
import org.optaplanner.core.config.heuristic.selector.move.factory.MoveIteratorFactoryConfig;
import org.optaplanner.core.config.heuristic.selector.move.generic.ChangeMoveSelectorConfig;
import org.optaplanner.core.config.heuristic.selector.move.generic.SwapMoveSelectorConfig;
import org.optaplanner.core.config.localsearch.LocalSearchPhaseConfig;
import org.optaplanner.core.config.localsearch.decider.acceptor.LocalSearchAcceptorConfig;
import org.optaplanner.core.config.localsearch.decider.forager.LocalSearchForagerConfig;
import org.optaplanner.core.config.score.director.ScoreDirectorFactoryConfig;
import org.optaplanner.core.config.solver.EnvironmentMode;
import org.optaplanner.core.config.solver.SolverConfig;
import org.optaplanner.core.config.solver.termination.TerminationConfig;

/**
 * Searches for a plan: trade-wise construction with restarts, then local search, on one or more
 * seeds at once. The same seed and number of steps give the same plan; a time limit does not.
 */
public final class PlanSearch {
  private static final int RESTARTS = 2;
  private static final double RESTART_NOISE = 0.8;
  private static final double RUIN_WEIGHT = 3.0;
  private static final double LEAST_STEP_NM = 5.0;
  private static final double STEP_SHARE = 0.002;

  /**
   * What is asked.
   *
   * @param scenario scenario
   * @param seed random seed; further threads use the seeds after it
   * @param steps steps of each search, or 0 for no limit
   * @param seconds time limit, or 0 for none; one of the two limits must be given
   * @param threads searches run side by side
   */
  public record Request(Scenario scenario, long seed, long steps, double seconds, int threads) {
    /** Refuses a search without end. */
    public Request {
      if (steps <= 0L && seconds <= 0.0) {
        throw new IllegalArgumentException("a search needs a limit in steps or seconds");
      }
      if (threads < 1) {
        throw new IllegalArgumentException("threads must be 1 or more: " + threads);
      }
    }
  }

  /**
   * What is found so far.
   *
   * @param plan the plan
   * @param momentNm worst moving rear overhang moment
   * @param unitsHome units that stay home
   */
  public record Best(LoadPlan plan, double momentNm, int unitsHome) {}

  /** Told of every better plan; called from the searching threads. */
  public interface Progress {
    /** A better plan was found. */
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
      List<Solver<PlanningLoad>> solvers = new ArrayList<>();
      List<Future<PlanningLoad>> futures = new ArrayList<>();
      long deadline =
          request.seconds() > 0.0
              ? System.nanoTime() + (long) (request.seconds() * 1.0e9)
              : Long.MAX_VALUE;
      double stepNm = 0.0;
      for (int i = 0; i < request.threads(); i++) {
        long seed = request.seed() + i;
        PackingProblem problem = new PackingProblem(request.scenario());
        PlanningLoad start = construct(problem, seed);
        if (i == 0) {
          stepNm = problem.stepNm();
        }
        problem.stepNm(stepNm);
        Solver<PlanningLoad> solver =
            SolverFactory.<PlanningLoad>create(config(request, seed)).buildSolver();
        solver.addEventListener(
            event -> progress.better(best(event.getNewBestSolution(), seed, request)));
        solvers.add(solver);
        futures.add(pool.submit(() -> solver.solve(start)));
      }
      return await(request, solvers, futures, deadline, cancelled);
    } finally {
      pool.shutdownNow();
    }
  }

  private static Best await(
      Request request,
      List<Solver<PlanningLoad>> solvers,
      List<Future<PlanningLoad>> futures,
      long deadline,
      BooleanSupplier cancelled) {
    PlanningLoad best = null;
    BendableLongScore bestScore = null;
    long bestSeed = request.seed();
    for (int i = 0; i < futures.size(); i++) {
      PlanningLoad found = await(futures.get(i), solvers, deadline, cancelled);
      BendableLongScore score = found.score();
      if (score != null && (bestScore == null || score.compareTo(bestScore) > 0)) {
        best = found;
        bestScore = score;
        bestSeed = request.seed() + i;
      }
    }
    if (best == null) {
      throw new NoPlanException();
    }
    return best(best, bestSeed, request);
  }

  private static PlanningLoad await(
      Future<PlanningLoad> future,
      List<Solver<PlanningLoad>> solvers,
      long deadline,
      BooleanSupplier cancelled) {
    while (true) {
      try {
        return future.get(50L, TimeUnit.MILLISECONDS);
      } catch (TimeoutException e) {
        if (cancelled.getAsBoolean() || System.nanoTime() >= deadline) {
          solvers.forEach(Solver::terminateEarly);
        }
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        solvers.forEach(Solver::terminateEarly);
        throw new IllegalStateException("interrupted while searching", e);
      } catch (ExecutionException e) {
        throw new IllegalStateException("the search failed", e.getCause());
      }
    }
  }

  /** Best of a few constructions; fixes the step in which moments are compared. */
  static PlanningLoad construct(PackingProblem problem, long seed) {
    Random random = new Random(seed);
    Construction construction = new Construction(problem);
    Packing best = null;
    BendableLongScore bestScore = null;
    for (int i = 0; i < RESTARTS; i++) {
      Packing packing = new Packing(problem, PackingProblem.firstBays(problem.scenario()));
      construction.packAll(packing, random, i == 0 ? 0.0 : RESTART_NOISE);
      if (best == null) {
        double moment = Lever.newtonMetres(packing.momentHalfGMm(), Lever.STANDARD_GRAVITY_M_S2);
        problem.stepNm(Math.max(LEAST_STEP_NM, Math.rint(moment * STEP_SHARE * 10.0) / 10.0));
      }
      BendableLongScore score =
          packing.levels().toScore(problem.scenario().settings().massLimits());
      if (bestScore == null || score.compareTo(bestScore) > 0) {
        best = packing;
        bestScore = score;
      }
    }
    return load(problem, best);
  }

  private static PlanningLoad load(
      PackingProblem problem, @org.jspecify.annotations.Nullable Packing packing) {
    List<PlanningItem> items = new ArrayList<>();
    int poses = 1;
    for (int i = 0; i < problem.units().size(); i++) {
      Wanted wanted = problem.units().get(i);
      poses = Math.max(poses, wanted.poses().size());
      PlanningItem item = new PlanningItem(i, wanted);
      if (packing != null) {
        item.setSpace(packing.spaceOf(i));
        item.setRank(packing.rankOf(i));
      }
      items.add(item);
    }
    List<PlanningModule> modules = new ArrayList<>();
    for (ModuleChoice choice : PackingProblem.openModules(problem.scenario())) {
      PlanningModule module = new PlanningModule(choice);
      module.setBay(
          PackingProblem.firstBays(problem.scenario())
              .getOrDefault(module.id(), PlanningModule.NO_BAY));
      modules.add(module);
    }
    List<String> spaces = new ArrayList<>(problem.allSpaceIds());
    return new PlanningLoad(problem, items, modules, spaces, poses);
  }

  private static Best best(PlanningLoad load, long seed, Request request) {
    Packing packing = new Packing(load.problem(), PackingScore.baysOf(load));
    for (PlanningItem item : load.items()) {
      packing.assign(item.index(), item.space(), item.pose(), item.rank());
    }
    LoadPlan.Origin origin =
        new LoadPlan.Origin(
            "solver",
            java.util.OptionalLong.of(seed),
            request.steps() > 0L
                ? java.util.OptionalLong.of(request.steps())
                : java.util.OptionalLong.empty(),
            java.util.OptionalLong.of(Math.round(load.problem().stepNm() * 10.0)));
    LoadPlan plan = packing.plan(origin);
    return new Best(
        plan,
        Lever.newtonMetres(packing.momentHalfGMm(), Lever.STANDARD_GRAVITY_M_S2),
        load.items().size() - plan.placements().size());
  }

  /** The raw type is in OptaPlanner's own signature of a union of moves. */
  @SuppressWarnings("rawtypes")
  static SolverConfig config(Request request, long seed) {
    List<MoveSelectorConfig> moves = new ArrayList<>();
    for (String variable : List.of("space", "pose", "rank")) {
      moves.add(
          new ChangeMoveSelectorConfig()
              .withEntitySelectorConfig(new EntitySelectorConfig(PlanningItem.class))
              .withValueSelectorConfig(
                  new org.optaplanner.core.config.heuristic.selector.value.ValueSelectorConfig(
                      variable)));
    }
    moves.add(
        new SwapMoveSelectorConfig()
            .withEntitySelectorConfig(new EntitySelectorConfig(PlanningItem.class)));
    moves.add(
        new MoveIteratorFactoryConfig()
            .withMoveIteratorFactoryClass(RuinMoves.class)
            .withFixedProbabilityWeight(RUIN_WEIGHT));
    if (!PackingProblem.openModules(request.scenario()).isEmpty()) {
      moves.add(
          new ChangeMoveSelectorConfig()
              .withEntitySelectorConfig(new EntitySelectorConfig(PlanningModule.class)));
      moves.add(
          new SwapMoveSelectorConfig()
              .withEntitySelectorConfig(new EntitySelectorConfig(PlanningModule.class)));
    }
    UnionMoveSelectorConfig union = new UnionMoveSelectorConfig().withMoveSelectorList(moves);
    TerminationConfig termination = new TerminationConfig();
    if (request.steps() > 0L) {
      termination.setStepCountLimit((int) Math.min(Integer.MAX_VALUE, request.steps()));
    }
    LocalSearchPhaseConfig search =
        new LocalSearchPhaseConfig()
            .withMoveSelectorConfig(union)
            .withAcceptorConfig(new LocalSearchAcceptorConfig().withLateAcceptanceSize(200))
            .withForagerConfig(new LocalSearchForagerConfig().withAcceptedCountLimit(1))
            .withTerminationConfig(termination);
    SolverConfig config =
        new SolverConfig()
            .withSolutionClass(PlanningLoad.class)
            .withEntityClasses(PlanningItem.class, PlanningModule.class)
            .withDomainAccessType(DomainAccessType.REFLECTION)
            .withEnvironmentMode(EnvironmentMode.REPRODUCIBLE)
            .withRandomSeed(seed)
            .withScoreDirectorFactory(
                new ScoreDirectorFactoryConfig()
                    .withIncrementalScoreCalculatorClass(PackingScore.class))
            .withPhases(search);
    return config;
  }
}
