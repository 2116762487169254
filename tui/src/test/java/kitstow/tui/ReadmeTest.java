package kitstow.tui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kitstow.tui.cli.ExitCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** What the README shows is what the program does. */
class ReadmeTest {
  private static final Path ROOT = Path.of("..");
  private static final Pattern BLOCK =
      Pattern.compile("^```(\\w*)\\n(.*?)^```$", Pattern.MULTILINE | Pattern.DOTALL);

  @TempDir Path folder;

  @Test
  void theExampleIsOverOnItsSlideUntilTheFridgeIsWeighed() throws IOException {
    List<String> json = blocks("json");
    assertThat(json).hasSize(3);
    Path scenario = Files.writeString(folder.resolve("weekend.json"), json.get(0));
    Path plan = Files.writeString(folder.resolve("weekend.plan.json"), json.get(1));

    Run over = Run.of("check", scenario.toString(), plan.toString());
    assertThat(over.err()).isEmpty();
    assertThat(over.exitCode()).isEqualTo(ExitCode.BROKEN);
    assertThat(over.outLines())
        .anyMatch(line -> line.startsWith("OVER: Slide of Flat fridge slide is 3.5 kg over"));

    String weighed =
        json.get(0)
            .replace("\"ute\": {", json.get(2) + "\"ute\": {")
            .replace("\"entry\": \"chest-fridge-60\"", "\"entry\": \"our-fridge\"");
    Files.writeString(scenario, weighed);
    Run within = Run.of("check", scenario.toString(), plan.toString());
    assertThat(within.err()).isEmpty();
    assertThat(within.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(within.out())
        .startsWith("Scenario")
        .contains("WITHIN: tightest is Slide of Flat fridge slide with 5.0 kg left (±2.1)");
  }

  @Test
  void checkPrintsWhatTheReadmeShows() throws IOException {
    Matcher files = Pattern.compile("`check (scenarios/\\S+) (scenarios/\\S+)`").matcher(readme());
    assertThat(files.find()).isTrue();
    Run run = Run.of("check", inRoot(files.group(1)), inRoot(files.group(2)));

    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(run.outLines())
        .as("the text screenshot of README.md is this output, trimmed")
        .containsSubsequence(shown());
  }

  private static String inRoot(String path) {
    return ROOT.resolve(path).toString();
  }

  private static List<String> shown() throws IOException {
    return blocks("text").get(0).lines().filter(line -> !line.equals("[...]")).toList();
  }

  @Test
  void everyVerbAndExitCodeIsTold() throws IOException {
    String readme = readme();
    CommandLine command = Main.commandLine();
    for (Map.Entry<String, CommandLine> verb : command.getSubcommands().entrySet()) {
      assertThat(readme).contains("| `" + verb.getKey());
      for (String code : verb.getValue().getCommandSpec().usageMessage().exitCodeList().keySet()) {
        assertThat(readme).contains("| " + code.strip() + " |");
      }
    }
    for (String code : command.getCommandSpec().usageMessage().exitCodeList().keySet()) {
      assertThat(readme).contains("| " + code.strip() + " |");
    }
  }

  private static List<String> blocks(String language) throws IOException {
    List<String> blocks = new ArrayList<>();
    Matcher block = BLOCK.matcher(readme());
    while (block.find()) {
      if (block.group(1).equals(language)) {
        blocks.add(block.group(2));
      }
    }
    return blocks;
  }

  private static String readme() throws IOException {
    return Files.readString(ROOT.resolve("README.md"));
  }
}
