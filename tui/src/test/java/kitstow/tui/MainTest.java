package kitstow.tui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import picocli.CommandLine.Command;

class MainTest {
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @Test
  void printsUsageWhenGivenNothingToDo() {
    assertThat(run(Main.commandLine())).isEqualTo(Main.EXIT_OK);
    assertThat(out.toString()).contains("Usage: kitstow");
    assertThat(err.toString()).isEmpty();
  }

  @Test
  void anUnknownOptionIsBadInput() {
    assertThat(run(Main.commandLine(), "--no-such-option")).isEqualTo(Main.EXIT_BAD_INPUT);
    assertThat(out.toString()).isEmpty();
    assertThat(err.toString()).contains("--no-such-option");
  }

  @Test
  void aFaultOfOurOwnIsToldInOneSentence() {
    CommandLine commandLine = Main.commandLine().addSubcommand(new Faulty());

    assertThat(run(commandLine, "faulty")).isEqualTo(Main.EXIT_OWN_FAULT);
    assertThat(out.toString()).isEmpty();
    assertThat(err.toString().lines())
        .containsExactly(
            "kitstow failed through a fault of its own: IllegalStateException (no such state).");
  }

  private int run(CommandLine commandLine, String... args) {
    return Main.execute(commandLine, new PrintWriter(out, true), new PrintWriter(err, true), args);
  }

  @Command(name = "faulty")
  private static final class Faulty implements Runnable {
    @Override
    public void run() {
      throw new IllegalStateException("no such state\nsecond line");
    }
  }
}
