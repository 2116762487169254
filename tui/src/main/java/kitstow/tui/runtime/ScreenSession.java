package kitstow.tui.runtime;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import com.googlecode.lanterna.screen.Screen;
import com.googlecode.lanterna.screen.TerminalScreen;
import com.googlecode.lanterna.terminal.Terminal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import kitstow.tui.app.AppState;
import kitstow.tui.app.Effect;
import kitstow.tui.app.Msg;
import kitstow.tui.app.Size;
import kitstow.tui.app.Step;
import kitstow.tui.app.Update;
import kitstow.tui.screen.View;
import kitstow.tui.widget.Frame;

/**
 * One run of the screen on a terminal: takes messages one after the other, has the state updated
 * and draws it. The terminal is given back as it was, however the run ends.
 */
public final class ScreenSession {
  /**
   * What was asked for.
   *
   * @param file scenario or plan to open, or a folder whose scenarios are listed
   * @param catalogue folder of catalogue files
   * @param ascii whether only ASCII may be used
   * @param colour whether colours may be used
   */
  public record Wish(
      Optional<Path> file, Optional<Path> catalogue, boolean ascii, boolean colour) {}

  private final Painter painter;
  private final Wish wish;
  private final Strokes strokes = new Strokes();
  private final BlockingQueue<Msg> messages = new LinkedBlockingQueue<>();
  private volatile Frame shown = new Frame(1, 1, /* ascii= */ true);
  private volatile boolean ended;
  private volatile Optional<Throwable> fault = Optional.empty();

  /** Opens the terminal. */
  public interface Opener {
    /**
     * Opens it.
     *
     * @throws IOException if there is none to be had
     */
    Terminal open() throws IOException;
  }

  private ScreenSession(Wish wish) {
    this.painter = new Painter(wish.colour());
    this.wish = wish;
  }

  /**
   * Runs until the user ends it. What is asked for is read while the terminal is opened.
   *
   * @throws IOException if the terminal fails
   */
  public static void run(Opener opener, Wish wish) throws IOException {
    new ScreenSession(wish).run(opener);
  }

  private void run(Opener opener) throws IOException {
    try (Workers workers =
        new Workers(
            new ScenarioFiles(wish.catalogue()), messages::add, this::fail, () -> ended = true)) {
      first().by(workers);
      run(opener.open(), workers);
    }
    if (fault.isPresent()) {
      throw new IllegalStateException("the screen failed", fault.get());
    }
  }

  private void run(Terminal terminal, Workers workers) throws IOException {
    Screen screen = new TerminalScreen(terminal);
    screen.startScreen();
    screen.setCursorPosition(null);
    Thread restore = new Thread(() -> restore(screen), "restore-terminal");
    Runtime.getRuntime().addShutdownHook(restore);
    terminal.addResizeListener((resized, size) -> messages.add(new Msg.Resized(size(size))));
    Thread input = new Thread(() -> readKeys(terminal), "keys");
    input.setDaemon(true);
    try {
      input.start();
      loop(screen, workers);
    } finally {
      screen.stopScreen();
      removeHook(restore);
    }
  }

  private void loop(Screen screen, Workers workers) throws IOException {
    AppState state = AppState.start(size(screen.getTerminalSize()), wish.ascii(), folder());
    if (file().isPresent()) {
      state = state.saying("reading " + file().get() + " ...");
    }
    draw(state, screen);
    while (!ended) {
      for (Msg message : waiting()) {
        Step step = Update.apply(state, message);
        state = step.state();
        step.effects().forEach(effect -> effect.by(workers));
      }
      draw(state, screen);
    }
  }

  /** What is done before all else. */
  private Effect first() {
    return file().<Effect>map(Effect.Open::new).orElse(new Effect.ListFolder(folder()));
  }

  private Optional<Path> file() {
    return wish.file().filter(named -> !Files.isDirectory(named));
  }

  private Path folder() {
    return ScenarioFiles.folder(file().map(ScreenSession::beside).orElse(here()));
  }

  /** The folder that was named, else this one. */
  private Path here() {
    return wish.file().filter(Files::isDirectory).orElse(Path.of(""));
  }

  private static Path beside(Path file) {
    Path folder = file.getParent();
    return folder == null ? Path.of("") : folder;
  }

  /** Waits for a message and takes all that have come by then. */
  private List<Msg> waiting() {
    List<Msg> all = new ArrayList<>();
    try {
      all.add(messages.take());
      messages.drainTo(all);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      ended = true;
    }
    return all;
  }

  private void draw(AppState state, Screen screen) throws IOException {
    TerminalSize resized = screen.doResizeIfNecessary();
    Size size = size(screen.getTerminalSize());
    AppState fitting = state.size().equals(size) ? state : state.with(size);
    shown = View.draw(fitting);
    painter.paint(shown, screen);
    screen.refresh(resized == null ? Screen.RefreshType.DELTA : Screen.RefreshType.COMPLETE);
  }

  private void readKeys(Terminal terminal) {
    try {
      while (!ended) {
        KeyStroke stroke = terminal.readInput();
        if (stroke == null || stroke.getKeyType() == KeyType.EOF) {
          ended = true;
          messages.add(new Msg.Rolled(0));
        } else {
          strokes.read(stroke, shown).ifPresent(messages::add);
        }
      }
    } catch (IOException e) {
      ended = true;
      messages.add(new Msg.Rolled(0));
    } catch (RuntimeException | Error e) {
      fail(e);
    }
  }

  private void fail(Throwable thrown) {
    fault = Optional.of(thrown);
    ended = true;
    messages.add(new Msg.Rolled(0));
  }

  private void restore(Screen screen) {
    try {
      screen.stopScreen();
    } catch (IOException e) {
      ended = true; // nothing is left that could be restored
    }
  }

  private void removeHook(Thread hook) {
    try {
      Runtime.getRuntime().removeShutdownHook(hook);
    } catch (IllegalStateException e) {
      ended = true; // the process is ending just now, and the hook has run
    }
  }

  private static Size size(TerminalSize size) {
    return new Size(size.getColumns(), size.getRows());
  }
}
