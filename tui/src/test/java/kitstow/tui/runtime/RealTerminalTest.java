package kitstow.tui.runtime;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.function.Predicate;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program as a process of its own on a real terminal, which tmux provides. */
class RealTerminalTest {
  private static final long PATIENCE_NANOS = TimeUnit.SECONDS.toNanos(180);
  private static final long STILL_NANOS = 1_000_000_000L;
  private static final Path REMOTE = Path.of("..", "scenarios", "remote-fortnight.json");

  @TempDir private Path folder;

  @BeforeEach
  void tmuxIsThere() {
    assumeTrue(there(), "skipped: tmux is not there, so no real terminal can be had");
  }

  private boolean there() {
    try {
      return run(List.of("tmux", "-V")).startsWith("tmux");
    } catch (IOException e) {
      return false;
    }
  }

  @AfterEach
  void theServerEnds() throws IOException {
    if (there()) {
      tmux("kill-server");
    }
  }

  @Test
  void thePicturesComeAKeyAnswersAndTheTerminalIsGivenBack() throws IOException {
    start(" ");
    sees("WITHIN ON PAPER ONLY");
    tmux("send-keys", "-t", "one", "/fridge");
    sees("Chest fridge 40 L");
    tmux("send-keys", "-t", "one", "Enter");
    settles();
    tmux("resize-window", "-t", "one", "-x", "80", "-y", "24");
    // While a terminal is asked for its size, keys pressed at that moment may be lost.
    settles();
    tmux("send-keys", "-t", "one", "?");
    sees("Keys here");
    tmux("send-keys", "-t", "one", "Escape");
    until(shown -> !shown.contains("Keys here"), "keys closed");
    tmux("send-keys", "-t", "one", "q");
    assertThat(sees("exit=0")).doesNotContain("Left side");
    tmux("send-keys", "-t", "one", "echo given-back", "Enter");
    sees("given-back");
  }

  @Test
  void aSignalToEndGivesTheTerminalBackToo() throws IOException {
    start(" & echo $! > " + folder.resolve("pid") + "; fg");
    sees("WITHIN ON PAPER ONLY");
    run(List.of("sh", "-c", "kill -TERM $(cat " + folder.resolve("pid") + ")"));
    sees("exit=");
    tmux("send-keys", "-t", "one", "echo given-back", "Enter");
    assertThat(sees("given-back")).doesNotContain("Left side");
  }

  private void start(String after) throws IOException {
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    String command =
        "XDG_STATE_HOME="
            + folder
            + " "
            + java
            + " -cp '"
            + System.getProperty("java.class.path")
            + "' kitstow.tui.Main "
            + REMOTE.toAbsolutePath();
    Path script = folder.resolve("start.sh");
    Files.writeString(script, "set -m\n" + command + after + "\necho exit=$?\nexec sh\n");
    tmux("new-session", "-d", "-s", "one", "-x", "120", "-y", "40", "sh " + script);
  }

  private String sees(String text) throws IOException {
    return until(shown -> shown.contains(text), text);
  }

  /** Waits until the screen has not changed for a while. */
  private void settles() throws IOException {
    String[] last = {""};
    until(
        shown -> {
          boolean same = shown.equals(last[0]);
          last[0] = shown;
          LockSupport.parkNanos(STILL_NANOS);
          return same;
        },
        "a screen that stays");
  }

  private String until(Predicate<String> wanted, String what) throws IOException {
    long end = System.nanoTime() + PATIENCE_NANOS;
    String shown = tmux("capture-pane", "-p", "-t", "one");
    while (!wanted.test(shown)) {
      assertThat(System.nanoTime()).as("waited for %s%n%s", what, shown).isLessThan(end);
      shown = tmux("capture-pane", "-p", "-t", "one");
    }
    return shown;
  }

  private String tmux(String... words) throws IOException {
    List<String> command =
        new ArrayList<>(
            List.of("tmux", "-S", folder.resolve("tmux").toString(), "-f", "/dev/null"));
    command.addAll(List.of(words));
    return run(command);
  }

  private static String run(List<String> command) throws IOException {
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    String said = new String(process.getInputStream().readAllBytes(), UTF_8);
    try {
      assertThat(process.waitFor(60, TimeUnit.SECONDS)).as(String.join(" ", command)).isTrue();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    return said;
  }
}
