package kitstow.tui.runtime;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.locks.LockSupport;
import kitstow.planner.json.ScenarioWriter;
import kitstow.planner.model.Item;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Scenario;
import kitstow.tui.Shipped;
import kitstow.tui.edit.Design;
import kitstow.tui.edit.Gear;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** How long a key takes to be seen while a search runs, and how soon the first screen stands. */
@Tag("screen")
class ScreenBench extends OwnState {
  private static final int UNITS = 200;
  private static final int KEYS = 200;
  private static final int STARTS = 10;
  private static final double PATIENCE_SECONDS = 120.0;
  private static final long LOOK_NANOS = 20_000_000L;
  private static final TerminalSize SIZE = new TerminalSize(120, 40);

  /** Each key goes to the next moment of the trip or back; it is seen when its number is shown. */
  @Test
  void keysAreAnsweredWhileTwoHundredUnitsAreSearchedFor() throws IOException {
    Path file = folder.resolve("many.json");
    Files.writeString(file, ScenarioWriter.write(OwnEntries.of(many())));
    TimedTerminal terminal = new TimedTerminal(SIZE);
    try (Robot robot = new Robot(Optional.of(file), terminal)) {
      robot.sees("Moment ").sees(UNITS + " at home");
      robot.type("S").sees("best so far");
      double[] millis = new double[KEYS];
      int searching = 0;
      for (int i = 0; i < KEYS; i++) {
        if (!robot.text().contains("SEARCHING")) {
          robot.sees("searches on").type("S").sees("best so far");
        }
        String shown = moment(terminal.row());
        assertThat(shown).matches(" Moment \\d+");
        millis[i] = terminal.millisUntilChanged(key(shown, i), shown);
        searching += robot.text().contains("SEARCHING") ? 1 : 0;
      }
      Arrays.sort(millis);
      System.out.printf(
          Locale.ROOT,
          "%d units, %d keys, %d of them while searching: key to frame %.1f ms median, %.1f ms in"
              + " 95 of 100, %.1f ms at most%n",
          UNITS,
          KEYS,
          searching,
          millis[KEYS / 2],
          millis[KEYS * 95 / 100 - 1],
          millis[KEYS - 1]);
      assertThat(searching).isGreaterThan(KEYS * 9 / 10);
    }
  }

  /** On and back by turns; a better plan may have led back to the first moment. */
  private static char key(String shown, int turn) {
    return shown.endsWith(" 1") || turn % 2 == 0 ? '.' : ',';
  }

  private static String moment(String row) {
    int at = row.indexOf(" of ");
    return at < 0 ? "" : row.substring(0, at);
  }

  /** The shipped fortnight with its gear again and again until there are enough units. */
  private static Scenario many() {
    Scenario scenario = Shipped.REMOTE.design().scenario();
    LoadPlan none =
        new LoadPlan(
            scenario.id(),
            Shipped.REMOTE.design().plan().moduleBays(),
            List.of(),
            LoadPlan.Origin.HAND);
    Design design = new Design(scenario, none);
    List<Item> gear = scenario.items();
    int units = gear.stream().mapToInt(Item::quantity).sum();
    for (int i = 0; units < UNITS; i = (i + 1) % gear.size()) {
      Item one = gear.get(i);
      if (one.quantity() <= UNITS - units && one.pin().isEmpty()) {
        design = Gear.with(design, List.of(one));
        units += one.quantity();
      }
    }
    return design.scenario();
  }

  @Test
  void theFirstScreenStandsSoon() throws IOException {
    assumeTrue(Files.exists(Path.of("/usr/bin/tmux")), "skipped: tmux is not there");
    double[] seconds = new double[STARTS];
    for (int i = 0; i < STARTS; i++) {
      seconds[i] = start(i);
    }
    Arrays.sort(seconds);
    System.out.printf(
        Locale.ROOT,
        "first screen of %d starts, from the start of the process: %.2f s median, %.2f s at most%n",
        STARTS,
        (seconds[STARTS / 2 - 1] + seconds[STARTS / 2]) / 2.0,
        seconds[STARTS - 1]);
  }

  /** Seconds until the pictures of the shipped fortnight stand on a terminal of its own. */
  private double start(int number) throws IOException {
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    Path script = folder.resolve("start.sh");
    Files.writeString(
        script,
        "exec "
            + java
            + " -Dkitstow.state="
            + folder.resolve("state")
            + " -cp '"
            + System.getProperty("java.class.path")
            + "' kitstow.tui.Main "
            + Path.of("..", "scenarios", "remote-fortnight.json").toAbsolutePath());
    String server = folder.resolve("tmux" + number).toString();
    long from = System.nanoTime();
    tmux(server, "new-session", "-d", "-x", "120", "-y", "40", "sh " + script);
    String shown = "";
    while (!shown.contains("mm a cell")) {
      assertThat((System.nanoTime() - from) / 1.0e9).as(shown).isLessThan(PATIENCE_SECONDS);
      LockSupport.parkNanos(LOOK_NANOS); // looking is work too
      shown = tmux(server, "capture-pane", "-p");
    }
    double seconds = (System.nanoTime() - from) / 1.0e9;
    tmux(server, "kill-server");
    return seconds;
  }

  private static String tmux(String server, String... words) throws IOException {
    List<String> command = new ArrayList<>(List.of("tmux", "-S", server, "-f", "/dev/null"));
    command.addAll(List.of(words));
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    return new String(process.getInputStream().readAllBytes(), UTF_8);
  }

  /** Notes when a frame has been put out. */
  private static final class TimedTerminal extends MemoryTerminal {
    private final Object frames = new Object();

    TimedTerminal(TerminalSize size) {
      super(size);
    }

    @Override
    @SuppressWarnings("UnsynchronizedOverridesSynchronized") // the lock is ours
    public void flush() {
      super.flush();
      synchronized (frames) {
        frames.notifyAll();
      }
    }

    /** Presses a key and waits until a frame shows a text no more. */
    double millisUntilChanged(char key, String shown) {
      long from = System.nanoTime();
      synchronized (frames) {
        addInput(new KeyStroke(key, false, false));
        while (moment(row()).equals(shown)) {
          try {
            frames.wait(1000);
          } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
          }
        }
      }
      return (System.nanoTime() - from) / 1.0e6;
    }

    /** The row of the moments. */
    String row() {
      TerminalSize size = getTerminalSize();
      StringBuilder text = new StringBuilder();
      for (int column = 0; column < size.getColumns(); column++) {
        text.append(getCharacter(column, size.getRows() - 3).getCharacterString());
      }
      return text.toString();
    }

    /** Ends it. */
    @Override
    public void close() {
      addInput(new KeyStroke(KeyType.EOF));
    }
  }
}
