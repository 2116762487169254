package kitstow.tui.runtime;

import java.time.Duration;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * Work on a thread of its own of which only the latest matters: what waits is dropped when
 * something newer comes.
 *
 * @param <T> what is worked on
 */
final class Latest<T> implements AutoCloseable {
  private final ExecutorService thread;
  private final AtomicReference<@Nullable T> waiting = new AtomicReference<>();
  private final Consumer<T> work;
  private final Duration calm;

  Latest(String name, Consumer<T> work) {
    this(name, work, Duration.ZERO);
  }

  /**
   * Such work.
   *
   * @param calm how long nothing newer must have come before it begins
   */
  Latest(String name, Consumer<T> work, Duration calm) {
    this.work = work;
    this.calm = calm;
    this.thread =
        Executors.newSingleThreadExecutor(
            task -> {
              Thread made = new Thread(task, name);
              made.setDaemon(true);
              return made;
            });
  }

  void ask(T what) {
    if (waiting.getAndSet(what) == null && !thread.isShutdown()) {
      thread.execute(this::next);
    }
  }

  private void next() {
    if (!calm.isZero() && !isCalm()) {
      return;
    }
    T what = waiting.getAndSet(null);
    if (what != null) {
      work.accept(what);
    }
  }

  /** Waits until nothing newer has come for a while; false if it is to end. */
  @SuppressWarnings("ReferenceEquality") // whether it is still the one that was asked for last
  private boolean isCalm() {
    try {
      T last;
      do {
        last = waiting.get();
        Thread.sleep(calm.toMillis());
      } while (waiting.get() != last);
      return true;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  /** Drops what waits and lets what is under way end. */
  void finish() {
    waiting.set(null);
    try {
      thread.submit(() -> {}).get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } catch (ExecutionException | RejectedExecutionException e) {
      throw new IllegalStateException("nothing was to be done", e);
    }
  }

  @Override
  public void close() {
    thread.shutdownNow();
  }
}
