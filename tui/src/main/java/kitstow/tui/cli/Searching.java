package kitstow.tui.cli;

import java.io.PrintWriter;
import java.util.OptionalLong;
import java.util.function.BooleanSupplier;
import kitstow.planner.report.CheckReport;
import kitstow.planner.solver.PlanSearch;

/** One search with its progress shown to whoever watches. */
final class Searching {
  /** Who finds a plan: the planner, or a test in its place. */
  interface Planner {
    CheckReport plan(
        PlanSearch.Request request, PlanSearch.Progress progress, BooleanSupplier cancelled);
  }

  /**
   * What was found.
   *
   * @param report judged plan
   * @param tookSeconds time by the clock
   * @param scoreCalculations plans scored, where the planner tells
   */
  record Found(CheckReport report, double tookSeconds, OptionalLong scoreCalculations) {}

  private Searching() {}

  static Found of(
      Planner planner, PlanSearch.Request request, PrintWriter err, Interruption interruption) {
    ProgressLine progress = new ProgressLine(err, ProgressLine.somebodyWatches());
    try {
      CheckReport report =
          planner.plan(
              request,
              progress,
              () -> {
                progress.tick();
                return interruption.asked();
              });
      return new Found(report, progress.seconds(), progress.scoreCalculations());
    } finally {
      progress.end();
    }
  }
}
