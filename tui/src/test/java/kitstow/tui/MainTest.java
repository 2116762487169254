package kitstow.tui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kitstow.tui.cli.ExitCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;
import picocli.CommandLine.Command;

class MainTest {
  @Test
  void printsUsageWhenGivenNothingToDo() {
    Run run = Run.of();
    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(run.out()).contains("Usage: kitstow", "check", "rules");
    assertThat(run.err()).isEmpty();
  }

  @Test
  void tellsItsVersion() {
    Run run = Run.of("--version");
    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(run.out()).startsWith("kitstow ");
  }

  @ParameterizedTest
  @ValueSource(strings = {"plan", "check", "compare", "gear", "rules"})
  void helpOfEveryVerbHasTwoExamples(String verb) {
    Run run = Run.of(verb, "--help");
    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(run.outLines()).filteredOn(line -> line.startsWith("  kitstow " + verb)).hasSize(2);
  }

  @Test
  void anUnknownOptionIsBadInput() {
    Run run = Run.of("--no-such-option");
    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains("--no-such-option");
  }

  @Test
  void aMissingFileNameIsBadInput() {
    Run run = Run.of("check", "trip.json");
    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(run.err()).contains("PLAN");
  }

  @Test
  void aFaultOfOurOwnIsToldInOneSentenceAndLogged() throws IOException {
    CommandLine commandLine = Main.commandLine().addSubcommand(new Faulty());

    Run run = Run.of(commandLine, "faulty");

    assertThat(run.exitCode()).isEqualTo(ExitCode.OWN_FAULT);
    assertThat(run.out()).isEmpty();
    assertThat(run.errLines()).hasSize(1);
    Matcher sentence =
        Pattern.compile(
                "kitstow failed through a fault of its own: IllegalStateException"
                    + " \\(no such state\\?\\[31m\\); what happened is written in (.*\\.log)\\.")
            .matcher(run.errLines().get(0));
    assertThat(sentence.matches()).as(run.err()).isTrue();
    Path log = Path.of(sentence.group(1));
    assertThat(Files.readString(log)).contains("second line", "at kitstow.tui.MainTest");
    Files.delete(log);
  }

  @Command(name = "faulty")
  private static final class Faulty implements Runnable {
    @Override
    public void run() {
      throw new IllegalStateException("no such state\u001b[31m\nsecond line");
    }
  }
}
