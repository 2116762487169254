package kitstow.tui.runtime;

import com.googlecode.lanterna.TerminalPosition;
import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import com.googlecode.lanterna.input.MouseAction;
import com.googlecode.lanterna.input.MouseActionType;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** Somebody at a terminal that exists in memory only: presses keys and waits for what is shown. */
final class Robot implements AutoCloseable {
  private static final long PATIENCE_NANOS = TimeUnit.SECONDS.toNanos(180);

  private final MemoryTerminal terminal;
  private final CompletableFuture<Void> run;

  Robot(Optional<Path> file, TerminalSize size) {
    this(file, new MemoryTerminal(size));
  }

  Robot(Optional<Path> file, MemoryTerminal terminal) {
    this.terminal = terminal;
    this.run =
        CompletableFuture.runAsync(
            () -> {
              try {
                ScreenSession.run(
                    () -> terminal,
                    new ScreenSession.Wish(
                        file, Optional.empty(), /* ascii= */ false, /* colour= */ true));
              } catch (IOException e) {
                throw new IllegalStateException(e);
              }
            },
            task -> {
              Thread thread = new Thread(task, "screen");
              thread.setDaemon(true);
              thread.start();
            });
  }

  /** Types signs. */
  Robot type(String text) {
    text.chars().forEach(sign -> terminal.addInput(new KeyStroke((char) sign, false, false)));
    return this;
  }

  /** Presses a key. */
  Robot press(KeyType key) {
    terminal.addInput(new KeyStroke(key));
    return this;
  }

  /** Clicks where a text is shown. */
  Robot click(String text) {
    String[] lines = text().split("\n", -1);
    for (int row = 0; row < lines.length; row++) {
      int column = lines[row].indexOf(text);
      if (column >= 0) {
        terminal.addInput(
            new MouseAction(MouseActionType.CLICK_DOWN, 1, new TerminalPosition(column, row)));
        return this;
      }
    }
    throw new AssertionError("not shown: " + text + "\n" + text());
  }

  /** Gives the terminal another size. */
  Robot resize(int columns, int rows) {
    terminal.setTerminalSize(new TerminalSize(columns, rows));
    return this;
  }

  /** Waits until a text is shown. */
  Robot sees(String text) {
    return until(shown -> shown.contains(text), text);
  }

  /** Waits until one of some texts is shown, and says which. */
  String seesOneOf(String... texts) {
    return oneOf(this::text, texts);
  }

  /** Waits until one of some texts is on the line of messages, and says which. */
  String saysOneOf(String... texts) {
    return oneOf(() -> text().split("\n", -1)[terminal.getTerminalSize().getRows() - 2], texts);
  }

  private String oneOf(Supplier<String> where, String... texts) {
    AtomicReference<String> seen = new AtomicReference<>("");
    until(
        shown -> {
          String there = where.get();
          Stream.of(texts).filter(there::contains).findFirst().ifPresent(seen::set);
          return !seen.get().isEmpty();
        },
        String.join(" | ", texts));
    return seen.get();
  }

  /** Waits until a text is shown no more. */
  Robot seesNo(String text) {
    return until(shown -> !shown.contains(text), "no " + text);
  }

  private Robot until(Predicate<String> wanted, String what) {
    long end = System.nanoTime() + PATIENCE_NANOS;
    while (!wanted.test(text())) {
      boolean ended = endsSoon();
      if (System.nanoTime() > end || (ended && !wanted.test(text()))) {
        throw new AssertionError("waited for: " + what + "\n" + text());
      }
    }
    return this;
  }

  /** Waits a little for the end. */
  private boolean endsSoon() {
    try {
      run.get(5, TimeUnit.MILLISECONDS);
      return true;
    } catch (TimeoutException e) {
      return false;
    } catch (InterruptedException | ExecutionException e) {
      throw new AssertionError(text(), e);
    }
  }

  /** All that is shown. */
  String text() {
    TerminalSize size = terminal.getTerminalSize();
    StringBuilder text = new StringBuilder();
    for (int row = 0; row < size.getRows(); row++) {
      for (int column = 0; column < size.getColumns(); column++) {
        text.append(terminal.getCharacter(column, row).getCharacterString());
      }
      text.append('\n');
    }
    return text.toString();
  }

  /** Waits until the screen has ended by itself. */
  void ends() {
    try {
      run.get(PATIENCE_NANOS, TimeUnit.NANOSECONDS);
    } catch (InterruptedException | ExecutionException | TimeoutException e) {
      throw new AssertionError("does not end\n" + text(), e);
    }
  }

  @Override
  public void close() {
    terminal.addInput(new KeyStroke(KeyType.EOF));
  }
}
