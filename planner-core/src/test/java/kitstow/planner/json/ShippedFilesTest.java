package kitstow.planner.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kitstow.planner.json.FaultyFiles.Kind;
import kitstow.planner.model.Catalogue;
import kitstow.planner.model.Scenario;
import org.junit.jupiter.api.Test;

/** Catalogue, scenarios and plans that are shipped read without a problem and keep their schema. */
class ShippedFilesTest {
  private static final Path FOLDER = Path.of(System.getProperty("kitstow.scenarios"));

  @Test
  void everyShippedFileKeepsItsSchemaAndReads() throws IOException {
    Catalogue catalogue = catalogue();
    Map<String, Scenario> scenarios = new TreeMap<>();
    Map<Path, String> plans = new TreeMap<>();
    for (Path file : files(FOLDER)) {
      String text = FaultyFiles.text(file);
      Kind kind = kindOf(text);
      assertThat(Schemas.faultyPaths(kind, text)).as(file.toString()).isEmpty();
      if (kind == Kind.SCENARIO) {
        Outcome<Scenario> outcome = ScenarioReader.read(text, catalogue);
        assertThat(TestFiles.problems(outcome)).as(file.toString()).isEmpty();
        Scenario scenario = TestFiles.value(outcome);
        scenarios.put(scenario.id(), scenario);
        assertThat(ScenarioReader.read(ScenarioWriter.write(scenario), Catalogue.EMPTY))
            .as(file + " written and read")
            .isEqualTo(outcome);
      } else if (kind == Kind.PLAN) {
        plans.put(file, text);
      }
    }
    plans.forEach(
        (file, text) -> {
          Scenario scenario = scenarios.get(scenarioOf(text));
          assertThat(TestFiles.problems(PlanReader.read(text, scenario))).as("" + file).isEmpty();
        });
  }

  private static Catalogue catalogue() throws IOException {
    List<NamedText> texts = new ArrayList<>();
    for (Path file : files(FOLDER.resolve("catalogue"))) {
      texts.add(new NamedText(String.valueOf(file.getFileName()), FaultyFiles.text(file)));
    }
    return TestFiles.value(CatalogueReader.read(texts));
  }

  private static List<Path> files(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files
          .filter(file -> file.toString().endsWith(".json"))
          .filter(file -> !file.startsWith(FaultyFiles.FOLDER))
          .filter(file -> !file.startsWith(FOLDER.resolve("schema")))
          .filter(file -> !file.toString().endsWith(".report.json"))
          .sorted()
          .collect(Collectors.toList());
    }
  }

  private static Kind kindOf(String text) {
    String kind = JsonParser.parseString(text).getAsJsonObject().get("kind").getAsString();
    return Kind.valueOf(kind.toUpperCase(Locale.ROOT));
  }

  private static String scenarioOf(String text) {
    return JsonParser.parseString(text).getAsJsonObject().get("scenario").getAsString();
  }
}
