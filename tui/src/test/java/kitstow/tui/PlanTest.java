package kitstow.tui;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kitstow.tui.cli.ExitCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlanTest {
  private static final String TRIP = Run.small("trip.json");

  @TempDir Path folder;

  @Test
  void aPlanIsFoundAndToldWithItsReport() {
    Run run = Run.of("plan", TRIP, "--steps", "50");
    assertThat(run.err()).isEmpty();
    assertThat(run.outLines())
        .allMatch(line -> line.length() <= 80)
        .noneMatch(line -> line.endsWith(" "));
    Golden.assertSame("small/planned.report.txt", run.outLines());
  }

  @Test
  void aPlanWithinItsLimitsExitsWithZero() throws IOException {
    Run run = Run.of("plan", edited(gear -> gear.addProperty("need", "nice")), "--steps", "20");
    assertThat(run.err()).isEmpty();
    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
  }

  /** The small trip with every line of its gear changed. */
  private String edited(Consumer<JsonObject> change) throws IOException {
    JsonObject trip = JsonParser.parseString(Files.readString(Path.of(TRIP))).getAsJsonObject();
    trip.getAsJsonArray("gear").forEach(gear -> change.accept(gear.getAsJsonObject()));
    Path catalogue = Files.createDirectory(folder.resolve("catalogue"));
    Files.copy(Path.of(Run.small("catalogue/small.json")), catalogue.resolve("small.json"));
    return Files.writeString(folder.resolve("trip.json"), trip.toString()).toString();
  }

  @Test
  void thePackListAndTheIndexMissNothing() {
    Run run = Run.of("plan", TRIP, "--steps", "50");
    Matcher aboard = Pattern.compile("(\\d+) of 16 units aboard").matcher(run.out());
    assertThat(aboard.find()).isTrue();
    List<String> lines = run.outLines();
    int index = lines.indexOf("Where is what");
    assertThat(lines.subList(lines.indexOf("Pack list"), index))
        .filteredOn(line -> line.startsWith("[ ] "))
        .hasSize(Integer.parseInt(aboard.group(1)));
    for (String item : List.of("Chest fridge 40 L", "Folding armchair 2", "Socket set in case")) {
      assertThat(lines.subList(index, lines.size())).anyMatch(line -> line.startsWith(item));
    }
  }

  @Test
  void plainSignsAreKeptTo() {
    Run run = Run.of("plan", TRIP, "--steps", "5", "--ascii");
    assertThat(StandardCharsets.US_ASCII.newEncoder().canEncode(run.out())).isTrue();
  }

  @Test
  void theFileItWritesIsReadByCheckWithTheSameAnswer() throws IOException {
    Path plan = folder.resolve("found.json");
    Run found = Run.of("plan", TRIP, "--steps", "50", "--out", plan.toString());
    Run checked = Run.of("check", TRIP, plan.toString());
    assertThat(checked.exitCode()).isEqualTo(found.exitCode());
    assertThat(found.out()).contains(checked.out());
    try (var files = Files.list(folder)) {
      assertThat(files).containsExactly(plan);
    }
  }

  /** So many steps that quick and slow rounds, shaken plans and prices of the floor come in. */
  @Test
  void theSameSeedsGiveTheSamePlanOnAnyNumberOfThreads() throws IOException {
    Path one = folder.resolve("one.json");
    Path two = folder.resolve("two.json");
    Run.of(
        "plan", TRIP, "--steps", "1500", "--seeds", "3", "--threads", "1", "--out", one.toString());
    Run.of(
        "plan", TRIP, "--steps", "1500", "--seeds", "3", "--threads", "2", "--out", two.toString());
    assertThat(Files.readString(two)).isEqualTo(Files.readString(one)).isNotEmpty();
  }

  @Test
  void aSearchGoesOnFromAPlanAndIsNoWorse() throws IOException {
    Path first = folder.resolve("first.json");
    Path second = folder.resolve("second.json");
    Run.of("plan", TRIP, "--steps", "60", "--out", first.toString());
    Run on =
        Run.of(
            "plan", TRIP, "--steps", "1", "--from", first.toString(), "--out", second.toString());
    assertThat(on.err()).isEmpty();
    assertThat(placements(second)).hasSizeGreaterThanOrEqualTo(placements(first).size());
  }

  private static JsonArray placements(Path plan) throws IOException {
    JsonObject root = JsonParser.parseString(Files.readString(plan)).getAsJsonObject();
    return root.getAsJsonArray("placements");
  }

  @Test
  void jsonTellsHowItWasSearchedForAndTheClockInOnePlaceOnly() {
    JsonObject report = json();
    JsonObject solve = report.getAsJsonObject("solve");
    assertThat(solve.get("seed").getAsLong()).isEqualTo(3L);
    assertThat(solve.get("steps").getAsLong()).isEqualTo(20L);
    assertThat(solve.get("secondsLimit").isJsonNull()).isTrue();
    assertThat(solve.get("scoreCalculations").getAsLong()).isGreaterThanOrEqualTo(20L);
    JsonObject bound = report.getAsJsonObject("bound");
    assertThat(bound.get("overhangMomentFloorNm").getAsDouble()).isPositive();
    assertThat(bound.get("gapPercentOfWhole").getAsDouble()).isBetween(0.0, 100.0);
    assertThat(report.remove("timing")).isNotNull();
    for (JsonElement home : report.getAsJsonArray("stayHome")) {
      assertThat(home.getAsJsonObject().getAsJsonArray("reasons")).isNotEmpty();
    }
    assertThat(report.getAsJsonArray("roomLeft")).isNotEmpty();
    for (JsonElement room : report.getAsJsonArray("roomLeft")) {
      assertThat(room.getAsJsonObject().get("leftKg").isJsonNull()).isFalse();
      assertThat(room.getAsJsonObject().get("rule").getAsString()).isNotEmpty();
    }

    JsonObject again = json();
    again.remove("timing");
    assertThat(again).isEqualTo(report);
  }

  private static JsonObject json() {
    Run run = Run.of("plan", TRIP, "--steps", "20", "--seed", "3", "--json");
    assertThat(run.err()).isEmpty();
    return JsonParser.parseString(run.out()).getAsJsonObject();
  }

  @Test
  void aTimeLimitEndsTheSearch() {
    Run run = Run.of("plan", TRIP, "--seconds", "0.5", "--threads", "1");
    assertThat(run.exitCode()).isIn(ExitCode.OK, ExitCode.BROKEN);
    assertThat(run.out()).startsWith("Search    seed 1, 0.5 s: ");
  }

  @Test
  void aMustThatFindsNoPlaceExitsWithOne() throws IOException {
    String crowded = edited(gear -> gear.addProperty("quantity", 9));
    Run run = Run.of("plan", crowded, "--steps", "1");
    assertThat(run.err()).isEmpty();
    assertThat(run.exitCode()).isEqualTo(ExitCode.BROKEN);
    assertThat(run.out()).contains("(MUST)", "MUST_TAKE");
  }

  @ParameterizedTest
  @CsvSource({"--seconds,0", "--seconds,-1", "--seconds,NaN", "--steps,0", "--threads,0"})
  void aSearchThatCannotBeIsRefused(String option, String value) {
    Run run = Run.of("plan", TRIP, option, value);
    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(run.err()).contains(option + " is");
    assertThat(run.out()).isEmpty();
  }

  @Test
  void aFolderThatIsNotThereIsToldBeforeTheSearch() {
    Path plan = folder.resolve("none").resolve("plan.json");
    Run run = Run.of("plan", TRIP, "--out", plan.toString());
    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(run.err()).contains("its folder is not there");
  }

  @Test
  void aFaultyScenarioIsBadInput() {
    assertThat(Run.of("plan", Run.small("plan.json")).exitCode()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(Run.of("plan", "none.json").err()).contains("there is no such file");
  }
}
