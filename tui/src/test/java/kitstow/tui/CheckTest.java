package kitstow.tui;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import kitstow.tui.cli.ExitCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CheckTest {
  private static final String TRIP = Run.small("trip.json");
  private static final String PLAN = Run.small("plan.json");
  private static final String BROKEN = Run.small("broken-plan.json");

  @TempDir Path folder;

  @Test
  void aPlanThatKeepsEveryRuleExitsWithZeroEvenIfOnPaperOnly() {
    Run run = Run.of("check", TRIP, PLAN);
    assertThat(run.err()).isEmpty();
    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(run.out()).contains("WITHIN ON PAPER ONLY");
    Golden.assertSame("small/plan.report.txt", run.outLines());
  }

  @Test
  void aBrokenRuleAndAMustLeftHomeExitWithOne() {
    Run run = Run.of("check", TRIP, BROKEN, "--ascii");
    assertThat(run.exitCode()).isEqualTo(ExitCode.BROKEN);
    assertThat(run.out()).contains("NO_OVERLAP", "MUST_TAKE", "NOT AS IT MUST BE");
    assertThat(StandardCharsets.US_ASCII.newEncoder().canEncode(run.out())).isTrue();
    Golden.assertSame("small/broken-plan.report.txt", run.outLines());
  }

  @Test
  void noLineIsWiderThanAnyTerminal() {
    assertThat(Run.of("check", TRIP, PLAN).outLines())
        .allMatch(line -> line.length() <= 80)
        .noneMatch(line -> line.endsWith(" "));
  }

  @Test
  void jsonIsWrittenAlone() {
    Run run = Run.of("check", TRIP, BROKEN, "--json");
    assertThat(run.exitCode()).isEqualTo(ExitCode.BROKEN);
    JsonObject report = JsonParser.parseString(run.out()).getAsJsonObject();
    assertThat(report.get("schemaVersion").getAsInt()).isEqualTo(1);
    assertThat(report.getAsJsonArray("placements")).hasSize(12);
    assertThat(report.getAsJsonArray("stayHome")).hasSize(4);
  }

  @Test
  void theBuiltInCatalogueServesAScenarioThatStandsAlone() throws IOException {
    Path alone = Files.copy(Path.of(TRIP), folder.resolve("trip.json"));
    Run run = Run.of("check", alone.toString(), PLAN);
    assertThat(run.err()).isEmpty();
    assertThat(run.exitCode()).isNotEqualTo(ExitCode.BAD_INPUT);
  }

  @Test
  void aCatalogueFolderWithoutJsonBesideTheScenarioIsPassedOver() throws IOException {
    Path alone = Files.copy(Path.of(TRIP), folder.resolve("trip.json"));
    Files.createDirectory(folder.resolve("catalogue"));
    assertThat(Run.of("check", alone.toString(), PLAN).exitCode()).isNotEqualTo(ExitCode.BAD_INPUT);
  }

  @Test
  void aNamedCatalogueIsTheOnlyOne() throws IOException {
    Path other = Files.createDirectory(folder.resolve("other"));
    Files.writeString(
        other.resolve("empty.json"),
        "{\"schemaVersion\":1,\"kind\":\"catalogue\",\"title\":\"Empty\"}");
    Run run = Run.of("check", TRIP, PLAN, "--catalogue", other.toString());
    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(run.err()).contains("mid-dual-cab-chassis");
  }
}
