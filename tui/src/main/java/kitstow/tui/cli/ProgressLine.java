package kitstow.tui.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.OptionalLong;
import kitstow.planner.solver.PlanSearch;
import org.jspecify.annotations.Nullable;

/**
 * One line about a search that goes on, written over itself; shown only where somebody watches.
 * Told of better plans from several threads.
 */
final class ProgressLine implements PlanSearch.Progress {
  private static final Path STANDARD_ERROR = Path.of("/proc/self/fd/2");
  private static final long LEAST_NANOS = 200_000_000L;

  private final PrintWriter err;
  private final boolean shown;
  private final long startNanos = System.nanoTime();
  private long lastNanos = startNanos - LEAST_NANOS;
  private int width;
  private long scoreCalculations;
  private PlanSearch.@Nullable Best best;

  ProgressLine(PrintWriter err, boolean shown) {
    this.err = err;
    this.shown = shown;
  }

  /** Whether standard error is a terminal, as far as Java 17 can tell. */
  @SuppressWarnings("SystemConsoleNull") // on Java 22 and later a line more at worst
  static boolean somebodyWatches() {
    if (Files.isSymbolicLink(STANDARD_ERROR)) {
      try {
        String target = Files.readSymbolicLink(STANDARD_ERROR).toString();
        return target.startsWith("/dev/pts/") || target.startsWith("/dev/tty");
      } catch (IOException | InvalidPathException e) {
        return false;
      }
    }
    return System.console() != null;
  }

  @Override
  public synchronized void better(PlanSearch.Best found) {
    scoreCalculations = Math.max(scoreCalculations, found.scoreCalculations());
    if (best == null
        || found.unitsHome() < best.unitsHome()
        || (found.unitsHome() == best.unitsHome() && found.momentNm() < best.momentNm())) {
      best = found;
    }
  }

  /** Writes the line anew if it is time to. */
  synchronized void tick() {
    long now = System.nanoTime();
    if (shown && now - lastNanos >= LEAST_NANOS) {
      lastNanos = now;
      show(text(best, seconds()));
    }
  }

  static String text(PlanSearch.@Nullable Best best, double seconds) {
    String time = String.format(Locale.ROOT, "%.1f s", seconds);
    return best == null
        ? time + ": packing for the first time"
        : String.format(
            Locale.ROOT,
            "%s: %,.0f N m behind the rear axle, %d at home",
            time,
            best.momentNm(),
            best.unitsHome());
  }

  /** Plans scored, as told at the end of the search. */
  synchronized OptionalLong scoreCalculations() {
    return scoreCalculations == 0L ? OptionalLong.empty() : OptionalLong.of(scoreCalculations);
  }

  /** Seconds since the search began. */
  double seconds() {
    return (System.nanoTime() - startNanos) / 1.0e9;
  }

  /** Takes the line away. */
  synchronized void end() {
    if (shown && width > 0) {
      show("");
      err.print('\r');
      err.flush();
    }
  }

  private void show(String text) {
    err.print('\r' + text + " ".repeat(Math.max(0, width - text.length())));
    err.flush();
    width = text.length();
  }
}
