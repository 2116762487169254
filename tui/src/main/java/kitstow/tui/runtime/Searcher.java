package kitstow.tui.runtime;

import java.util.function.Consumer;
import kitstow.planner.LoadPlanner;
import kitstow.planner.report.CheckReport;
import kitstow.planner.solver.PlanSearch;
import kitstow.tui.app.Msg;
import kitstow.tui.edit.Design;
import org.jspecify.annotations.Nullable;

/** Runs one search at a time on a thread of its own and tells how it goes. */
final class Searcher implements AutoCloseable {
  private static final long LEAST_NANOS = 200_000_000L;

  private final Consumer<Msg> tell;
  private final Consumer<Throwable> fault;
  private volatile boolean stopped;
  private @Nullable Thread thread;

  Searcher(Consumer<Msg> tell, Consumer<Throwable> fault) {
    this.tell = tell;
    this.fault = fault;
  }

  void search(int number, Design design, double seconds, boolean fromNothing) {
    stopped = false;
    Thread made = new Thread(() -> run(number, design, seconds, fromNothing), "search");
    made.setDaemon(true);
    thread = made;
    made.start();
  }

  private void run(int number, Design design, double seconds, boolean fromNothing) {
    Course course = new Course(number);
    int threads = Math.max(1, Runtime.getRuntime().availableProcessors() - 1);
    PlanSearch.Request afresh =
        new PlanSearch.Request(
            design.scenario(), /* seed= */ number, /* steps= */ 0L, seconds, threads);
    PlanSearch.Request request = fromNothing ? afresh : afresh.from(design.plan());
    try {
      CheckReport before = LoadPlanner.check(design.scenario(), design.plan());
      CheckReport found = LoadPlanner.plan(request, course::better, course::over);
      tell.accept(new Msg.SearchEnded(number, before, found));
    } catch (RuntimeException | Error e) {
      fault.accept(e);
    }
  }

  void stop() {
    stopped = true;
  }

  @Override
  public void close() {
    stopped = true;
    if (thread != null) {
      thread.interrupt();
    }
  }

  /** One search: what is told of it, and how often. */
  private final class Course {
    private final int number;
    private final long startNanos = System.nanoTime();
    private long toldNanos = startNanos;
    private PlanSearch.@Nullable Best best;
    private boolean told = true;

    Course(int number) {
      this.number = number;
    }

    synchronized void better(PlanSearch.Best found) {
      PlanSearch.Best before = best;
      if (before == null
          || found.unitsHome() < before.unitsHome()
          || (found.unitsHome() == before.unitsHome() && found.momentNm() < before.momentNm())) {
        best = found;
        told = false;
      }
    }

    /** Whether it is to end; asked a few times a second, and tells how it stands by the way. */
    synchronized boolean over() {
      long now = System.nanoTime();
      if (now - toldNanos >= LEAST_NANOS) {
        toldNanos = now;
        tell.accept(new Msg.Ticked(number, (now - startNanos) / 1.0e9));
        PlanSearch.Best found = best;
        if (found != null && !told) {
          told = true;
          tell.accept(new Msg.Better(number, found.plan(), found.momentNm(), found.unitsHome()));
        }
      }
      return stopped;
    }
  }
}
