package kitstow.tui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import kitstow.tui.cli.ExitCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BadInputTest {
  private static final String TRIP = Run.small("trip.json");
  private static final String PLAN = Run.small("plan.json");

  @TempDir Path folder;

  @Test
  void everyMissingFileIsNamedAtOnce() {
    Run run = Run.of("check", "no-trip.json", "no-plan.json", "--catalogue", "no-folder");
    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(run.out()).isEmpty();
    assertThat(run.err())
        .contains("no-trip.json: there is no such file. Hint: ")
        .contains("no-plan.json: there is no such file. Hint: ")
        .contains("no-folder: is no folder with JSON files. Hint: ");
  }

  @Test
  void aFolderInPlaceOfAFileIsToldAsSuch() {
    assertThat(Run.of("check", folder.toString(), PLAN).err())
        .startsWith(folder + ": is a folder, must be a file. Hint: ");
  }

  @Test
  void aFileThatIsNotUtf8IsToldAsSuch() throws IOException {
    Path file = folder.resolve("latin.json");
    Files.write(file, "{\"title\": \"Göteborg\"}".getBytes(StandardCharsets.ISO_8859_1));
    Run run = Run.of("check", file.toString(), PLAN);
    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(run.err()).contains("latin.json: is not text in UTF-8. Hint: ");
  }

  @Test
  void aByteOrderMarkDoesNoHarm() throws IOException {
    Path file = folder.resolve("plan.json");
    Files.writeString(file, "\uFEFF" + Files.readString(Path.of(PLAN)));
    assertThat(Run.of("check", TRIP, file.toString()).exitCode()).isEqualTo(ExitCode.OK);
  }

  @Test
  void allFaultsOfAScenarioAreListedWithFileAndPath() throws IOException {
    Path file = Path.of(TRIP).resolveSibling("faulty-trip.json");
    Files.writeString(
        file,
        Files.readString(Path.of(TRIP))
            .replace("\"quantity\": 2", "\"quantity\": -2")
            .replace("\"distanceKm\": 350", "\"distanceKm\": \"far\""));
    try {
      Run run = Run.of("check", file.toString(), PLAN);
      assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_INPUT);
      assertThat(run.errLines())
          .filteredOn(line -> line.startsWith(file + " $.") && line.contains(". Hint: "))
          .hasSizeGreaterThanOrEqualTo(4);
      assertThat(run.err()).contains("$.trip.legs[0].distanceKm", "plan.json was looked at alone");
    } finally {
      Files.delete(file);
    }
  }

  @Test
  void allFaultsOfAPlanAreListed() throws IOException {
    Path file = folder.resolve("plan.json");
    Files.writeString(
        file,
        Files.readString(Path.of(PLAN))
            .replace("\"drawer/inside\"", "\"drawer/insid\"")
            .replace("\"swag-double\"", "\"swag-triple\""));
    Run run = Run.of("check", TRIP, file.toString());
    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(run.err()).contains("drawer/insid", "swag-triple");
    assertThat(run.errLines()).allMatch(line -> line.startsWith(file + " $."));
  }

  @Test
  void faultsOfScenarioAndPlanAreListedAtOnce() throws IOException {
    Path scenario = folder.resolve("trip.json");
    Files.writeString(
        scenario, Files.readString(Path.of(TRIP)).replace("\"quantity\": 2", "\"quantity\": -2"));
    Path plan = folder.resolve("plan.json");
    Files.writeString(plan, Files.readString(Path.of(PLAN)).replace("\"LWH\"", "\"LWX\""));
    Run run = Run.of("check", scenario.toString(), plan.toString());
    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(run.errLines()).anyMatch(line -> line.startsWith(scenario + " $.gear"));
    assertThat(run.errLines())
        .anyMatch(line -> line.startsWith(plan + " $.placements[1].turn: is \"LWX\""));
  }

  @Test
  void aScenarioIsLookedThroughAlthoughThePlanIsMissing() throws IOException {
    Path scenario = folder.resolve("trip.json");
    Files.writeString(
        scenario, Files.readString(Path.of(TRIP)).replace("\"quantity\": 2", "\"quantity\": -2"));
    Run run = Run.of("check", scenario.toString(), "no-plan.json");
    assertThat(run.err()).contains("no-plan.json: there is no such file", scenario + " $.gear");
  }

  @Test
  void faultsOfACatalogueAreListedWithTheirFile() throws IOException {
    Files.writeString(folder.resolve("bad.json"), "{\"schemaVersion\":1,\"kind\":\"plan\"}");
    Run run = Run.of("check", TRIP, PLAN, "--catalogue", folder.toString());
    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(run.err()).contains("bad.json $");
  }
}
