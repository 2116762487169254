package kitstow.planner.android.example;

import java.util.Optional;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import kitstow.planner.PlanningJob;
import kitstow.planner.json.PlanReader;
import kitstow.planner.json.PlanWriter;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Scenario;
import kitstow.planner.report.CheckReport;
import kitstow.planner.solver.PlanSearch;

/**
 * Planning as an app does it: one search at a time on a thread of its own, progress on the thread
 * that draws, and a text that outlives the process. Belongs to what lives as long as the screen's
 * data does, not to the screen.
 */
public final class TripPlanning {
  private final Scenario scenario;
  private final Executor mainThread;
  private final ExecutorService worker = Executors.newSingleThreadExecutor();
  private Optional<PlanningJob> job = Optional.empty();
  private String kept = "";

  /**
   * Planning of one trip.
   *
   * @param scenario the trip, read from the app's own text of it
   * @param mainThread posts to the thread that draws, as {@code handler::post} does
   */
  public TripPlanning(Scenario scenario, Executor mainThread) {
    this.scenario = scenario;
    this.mainThread = mainThread;
  }

  /** Takes up a text that {@link #toKeep} gave in an earlier process. */
  public void resumeFrom(String keptBefore) {
    kept = keptBefore;
  }

  /**
   * Starts a search of some seconds from the plan that is kept, if there is one.
   *
   * @param progress told of every better plan, on the main thread
   * @param ended told of the judged plan, on the main thread
   */
  public void start(
      double seconds, Consumer<PlanSearch.Best> progress, Consumer<CheckReport> ended) {
    PlanSearch.Request fromNothing =
        new PlanSearch.Request(scenario, /* seed= */ 1, /* steps= */ 0, seconds, /* threads= */ 1);
    PlanSearch.Request request = keptPlan().map(fromNothing::from).orElse(fromNothing);
    PlanningJob started =
        PlanningJob.start(
            request, worker, better -> mainThread.execute(() -> progress.accept(better)));
    job = Optional.of(started);
    CompletionStage<CheckReport> report = started.report();
    report.thenAcceptAsync(ended, mainThread);
  }

  /** Ends the search soon; what it has found is told as ever. */
  public void stop() {
    job.ifPresent(PlanningJob::stop);
  }

  /** The text to put where the system keeps it when it ends the process. Short, no file needed. */
  public String toKeep() {
    job.flatMap(PlanningJob::best).ifPresent(best -> kept = PlanWriter.write(best.plan()));
    return kept;
  }

  /** Ends the thread too, when the trip is closed. */
  public void close() {
    stop();
    worker.shutdown();
  }

  /** A text of another trip, or of an older version, is worth no more than no text. */
  private Optional<LoadPlan> keptPlan() {
    return PlanReader.read(kept, scenario)
        .match(read -> Optional.of(read.value()), refused -> Optional.<LoadPlan>empty());
  }
}
