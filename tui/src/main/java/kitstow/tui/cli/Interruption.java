package kitstow.tui.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Turns Ctrl-C during a search into "enough": the search stops, and what it has is still printed
 * and written before the process ends.
 */
final class Interruption implements AutoCloseable {
  private static final long PATIENCE_SECONDS = 20L;

  private final CountDownLatch done = new CountDownLatch(1);
  private final Thread hook = new Thread(this::waitForTheEnd, "stop-the-search");
  private volatile boolean asked;

  Interruption() {
    Runtime.getRuntime().addShutdownHook(hook);
  }

  private void waitForTheEnd() {
    asked = true;
    try {
      if (!done.await(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
        asked = true;
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** Whether the process was asked to end. */
  boolean asked() {
    return asked;
  }

  @Override
  public void close() {
    done.countDown();
    if (!asked) {
      try {
        Runtime.getRuntime().removeShutdownHook(hook);
      } catch (IllegalStateException e) {
        asked = true; // the process is ending just now
      }
    }
  }
}
