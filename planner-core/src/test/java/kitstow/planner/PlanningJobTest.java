package kitstow.planner;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import kitstow.planner.json.Outcome;
import kitstow.planner.json.PlanReader;
import kitstow.planner.json.PlanWriter;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Scenario;
import kitstow.planner.report.CheckReport;
import kitstow.planner.scenarios.ShippedFiles;
import kitstow.planner.solver.PlanSearch;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Planning beside other work, on a shipped scenario. */
@Timeout(300)
class PlanningJobTest {
  private static final Scenario SCENARIO = ShippedFiles.scenario("remote-fortnight");

  private static final long STEPS = 60;

  private final ExecutorService worker = Executors.newSingleThreadExecutor();

  @AfterEach
  void endWorker() {
    worker.shutdownNow();
  }

  private static PlanSearch.Request steps(long steps) {
    return new PlanSearch.Request(SCENARIO, /* seed= */ 3, steps, /* seconds= */ 0.0, 1);
  }

  private static PlanSearch.Request hours() {
    return new PlanSearch.Request(SCENARIO, /* seed= */ 3, /* steps= */ 0, 7200.0, 1);
  }

  private static CheckReport ended(PlanningJob job) throws Exception {
    return job.report().toCompletableFuture().get();
  }

  @Test
  void jobFindsWhatACallOfThePlannerFinds() throws Exception {
    List<LoadPlan> told = new CopyOnWriteArrayList<>();

    PlanningJob job = PlanningJob.start(steps(STEPS), worker, best -> told.add(best.plan()));
    LoadPlan found = ended(job).situation().loading().plan();

    CheckReport called = LoadPlanner.plan(steps(STEPS), best -> {}, () -> false);
    assertThat(found).isEqualTo(called.situation().loading().plan());
    assertThat(job.best()).hasValueSatisfying(best -> assertThat(best.plan()).isEqualTo(found));
    assertThat(told).isNotEmpty().endsWith(found);
  }

  @Test
  void stoppedJobEndsWithAJudgedPlan() throws Exception {
    CountDownLatch found = new CountDownLatch(1);
    PlanningJob job = PlanningJob.start(hours(), worker, best -> found.countDown());
    found.await();

    job.stop();
    job.stop();

    assertThat(ended(job).situation().loading().plan().placements()).isNotEmpty();
  }

  @Test
  void jobStoppedBeforeItsTurnEndsToo() throws Exception {
    CountDownLatch busy = new CountDownLatch(1);
    Future<Boolean> other = worker.submit(() -> busy.await(60, TimeUnit.SECONDS));
    PlanningJob job = PlanningJob.start(hours(), worker, best -> {});
    assertThat(job.best()).isEmpty();

    job.stop();
    busy.countDown();

    assertThat(ended(job).situation().loading().scenario()).isEqualTo(SCENARIO);
    assertThat(other.get()).isTrue();
  }

  @Test
  void faultOfWhoeverWatchesReachesTheReport() {
    PlanningJob job =
        PlanningJob.start(
            steps(STEPS),
            worker,
            best -> {
              throw new UnsupportedOperationException("the screen is gone");
            });

    assertThatThrownBy(() -> ended(job))
        .isInstanceOf(ExecutionException.class)
        .hasRootCauseInstanceOf(UnsupportedOperationException.class);
  }

  @ParameterizedTest
  @ValueSource(strings = {"remote-fortnight", "work-day", "counter-1500"})
  void jobGoesOnFromThePlanThatWasKeptAsText(String name) throws Exception {
    Scenario scenario = ShippedFiles.scenario(name);
    PlanSearch.Request request = new PlanSearch.Request(scenario, /* seed= */ 3, STEPS, 0.0, 1);
    PlanningJob first = PlanningJob.start(request, worker, best -> {});
    ended(first);
    PlanSearch.Best kept = first.best().orElseThrow();
    String text = PlanWriter.write(kept.plan());

    List<PlanSearch.Best> told = new CopyOnWriteArrayList<>();
    PlanningJob second = PlanningJob.start(request.from(read(text, scenario)), worker, told::add);
    ended(second);

    PlanSearch.Best start = told.get(0);
    assertThat(start.plan().moduleBays()).isEqualTo(kept.plan().moduleBays());
    assertThat(start.plan().placements())
        .containsExactlyInAnyOrderElementsOf(kept.plan().placements());
    assertThat(start.momentNm()).isEqualTo(kept.momentNm());
  }

  private static LoadPlan read(String text, Scenario scenario) {
    return PlanReader.read(text, scenario)
        .match(
            Outcome.Read::value,
            refused -> {
              throw new AssertionError(refused.report().text());
            });
  }
}
