package kitstow.tui.cli;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Scenario;
import kitstow.planner.solver.PlanSearch;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** How long and in which way to search; the same for all verbs that do. */
final class SearchOptions {
  private static final double USUAL_SECONDS = 10.0;
  private static final double MOST_SECONDS = 86_400.0;
  private static final int MOST_THREADS = 256;

  @Option(
      names = "--seconds",
      paramLabel = "S",
      description = "Time to search for; 10 if no limit is given.")
  private @Nullable Double seconds;

  @Option(
      names = "--steps",
      paramLabel = "N",
      description =
          "Steps of each search. Without --seconds the time does not count: the same seed, seeds and"
              + " steps always give the same plan, on any number of threads.")
  private @Nullable Integer steps;

  @Option(
      names = "--seed",
      paramLabel = "N",
      defaultValue = "1",
      description = "Seed of the search; another one may find another plan. Default: 1.")
  private long seed;

  @Option(
      names = "--seeds",
      paramLabel = "N",
      description =
          "Searches in all, each with the next seed; the best plan is taken. Default: as many as"
              + " threads; 1 if only steps are given.")
  private @Nullable Integer seeds;

  @Option(
      names = "--threads",
      paramLabel = "N",
      description =
          "Searches side by side. Default: as many as the processor has cores, and no more than"
              + " --seeds if that is given.")
  private @Nullable Integer threads;

  /**
   * What is asked of the planner.
   *
   * @param start a plan to go on from, if any
   */
  PlanSearch.Request request(Scenario scenario, Optional<LoadPlan> start) {
    return new PlanSearch.Request(
        scenario,
        start,
        seed,
        seeds(),
        steps == null ? 0L : steps.longValue(),
        secondsLimit().orElse(0.0),
        threads());
  }

  /** Refuses what no search can be asked for. */
  void refuseWrong(CommandSpec spec) {
    if (seconds != null && !(seconds > 0.0 && seconds <= MOST_SECONDS)) {
      throw new ParameterException(
          spec.commandLine(), "--seconds is " + seconds + ", must be above 0 and at most 86400");
    }
    if (steps != null && steps < 1) {
      throw new ParameterException(
          spec.commandLine(), "--steps is " + steps + ", must be 1 or more");
    }
    if (seeds != null && (seeds < 1 || seeds > MOST_THREADS)) {
      throw new ParameterException(
          spec.commandLine(), "--seeds is " + seeds + ", must be 1 to " + MOST_THREADS);
    }
    if (threads != null && (threads < 1 || threads > MOST_THREADS)) {
      throw new ParameterException(
          spec.commandLine(), "--threads is " + threads + ", must be 1 to " + MOST_THREADS);
    }
  }

  OptionalDouble secondsLimit() {
    if (seconds != null) {
      return OptionalDouble.of(seconds);
    }
    return steps == null ? OptionalDouble.of(USUAL_SECONDS) : OptionalDouble.empty();
  }

  OptionalLong stepsLimit() {
    return steps == null ? OptionalLong.empty() : OptionalLong.of(steps);
  }

  int seeds() {
    if (seeds != null) {
      return seeds;
    }
    return secondsLimit().isEmpty() ? 1 : threads();
  }

  int threads() {
    if (threads != null) {
      return threads;
    }
    int cores = Math.min(MOST_THREADS, Runtime.getRuntime().availableProcessors());
    if (seeds != null) {
      return Math.min(seeds, cores);
    }
    return secondsLimit().isEmpty() ? 1 : cores;
  }
}
