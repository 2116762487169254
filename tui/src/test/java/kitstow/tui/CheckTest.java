package kitstow.tui;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import kitstow.tui.cli.ExitCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

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
    assertThat(run.out()).contains("NO_OVERLAP", "MUST_TAKE");
    assertThat(run.outLines().get(answer(run)))
        .as("never WITHIN first where a rule is broken")
        .startsWith("NOT AS IT MUST BE: 2 rules broken (first: ");
    assertThat(run.out()).contains("masses within on paper only: ");
    assertThat(StandardCharsets.US_ASCII.newEncoder().canEncode(run.out())).isTrue();
    Golden.assertSame("small/broken-plan.report.txt", run.outLines());
  }

  @Test
  void aSupplyThatComesFromNowhereIsToldApartFromOneThatRunsOut() throws IOException {
    JsonObject trip = JsonParser.parseString(Files.readString(Path.of(TRIP))).getAsJsonObject();
    trip.getAsJsonObject("trip").add("supplies", new JsonArray());
    Path file = folder.resolve("trip.json");
    Files.writeString(file, trip.toString());
    Run run = Run.of("check", file.toString(), PLAN);
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .contains("NO SUPPLY named: food, fuel, water; see the states.")
        .contains("NO SUPPLY: Desert tracks takes 12.0 kg of food, and the supplies of the trip")
        .doesNotContain("RUNS OUT");
  }

  @Test
  void noLineIsWiderThanAnyTerminal() {
    assertThat(Run.of("check", TRIP, PLAN).outLines())
        .allMatch(line -> line.length() <= 80)
        .noneMatch(line -> line.endsWith(" "));
  }

  /** The line after the title block. */
  private static int answer(Run run) {
    return run.outLines().indexOf("") + 1;
  }

  @ParameterizedTest
  @ValueSource(strings = {"remote-fortnight", "dual-cab-fortnight", "counter-1500", "work-day"})
  void theReportOfAShippedScenarioIsTheOneBesideIt(String name) {
    Run run = Run.of("check", shipped(name + ".json"), shipped(name + ".plan.json"));
    assertThat(run.err()).isEmpty();
    assertThat(run.outLines()).allMatch(line -> line.length() <= 80);
    Golden.assertShipped(name + ".report.txt", run.outLines());
  }

  @Test
  void everyLimitStateAndNoteIsListedOnlyWhenAskedFor() {
    String[] files = {shipped("remote-fortnight.json"), shipped("remote-fortnight.plan.json")};
    Run brief = Run.of("check", files[0], files[1]);
    Run all = Run.of("check", files[0], files[1], "--all");
    assertThat(all.outLines().size()).isGreaterThan(brief.outLines().size() + 100);
    assertThat(all.out()).doesNotContain("--all");
    assertThat(brief.out())
        .containsPattern("and \\d+ more limits below 50 % \\(check --all lists them\\)")
        .containsPattern("and \\d+ states in between")
        .containsPattern("And \\d+ more of POOR_COMPANY");
  }

  @Test
  void unitsAndTheirSpaceAreNamed() {
    Run run =
        Run.of("check", shipped("remote-fortnight.json"), shipped("remote-fortnight.plan.json"));
    assertThat(run.out().replaceAll("\\s+", " "))
        .contains(
            "Water can 20 L 2 (in Water cans on the deck, left) comes out only after Water can 20 L"
                + " 1.");
  }

  @Test
  void anOverloadNamesTheHeaviestThreeAndTheNextBreach() {
    Run run =
        Run.of(
            "check", shipped("dual-cab-fortnight.json"), shipped("dual-cab-fortnight.plan.json"));
    assertThat(run.outLines().get(answer(run))).startsWith("OVER: Rear axle is ");
    assertThat(run.out().replaceAll("\\s+", " "))
        .contains("NOT AS IT MUST BE: 2 more breaches of rules (first: Total mass (GVM): ")
        .contains(" over its limit of 2,000.0 kg; heaviest load on it: ");
  }

  @Test
  void aUteThatWasWeighedSaysWhen() {
    assertThat(Run.of("check", TRIP, PLAN).out())
        .contains("Vehicle   Mid-size dual cab, weighed 2024-07-01; ");
    Run run =
        Run.of(
            "check", shipped("dual-cab-fortnight.json"), shipped("dual-cab-fortnight.plan.json"));
    assertThat(run.out()).contains("Vehicle   Mid-size dual cab, given as cab-chassis at tare; ");
  }

  @Test
  void heightAndReachAreToldWithWhatToCompareThemWith() {
    String out = Run.of("check", TRIP, PLAN).out().replaceAll("\\s+", " ");
    assertThat(out)
        .containsPattern("Highest centre of mass while moving: \\d+ mm above the ground, ")
        .contains("60 % of the wheelbase is ", "light-vehicle law differs by state");
  }

  private static String shipped(String name) {
    return Path.of("..", "scenarios", name).toString();
  }

  @Test
  void jsonIsWrittenAlone() {
    Run run = Run.of("check", TRIP, BROKEN, "--json");
    assertThat(run.exitCode()).isEqualTo(ExitCode.BROKEN);
    JsonObject report = JsonParser.parseString(run.out()).getAsJsonObject();
    assertThat(report.get("schemaVersion").getAsInt()).isEqualTo(1);
    assertThat(report.get("brokenRules").getAsInt()).isEqualTo(2);
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
