package kitstow.planner.scenarios;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import kitstow.planner.LoadPlanner;
import kitstow.planner.json.CatalogueReader;
import kitstow.planner.json.NamedText;
import kitstow.planner.json.Outcome;
import kitstow.planner.json.PlanReader;
import kitstow.planner.json.ScenarioReader;
import kitstow.planner.model.Catalogue;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Scenario;
import kitstow.planner.report.CheckReport;

/** The folder of scenarios, read with the readers users have. A warning counts as a fault here. */
public final class ShippedFiles {
  private static final Path FOLDER = Path.of("..", "scenarios");
  private static final String JSON = ".json";
  private static final String PLAN = ".plan.json";

  private static final Catalogue CATALOGUE = catalogue();

  private ShippedFiles() {}

  /** Names of all scenarios, without the ending. */
  public static List<String> scenarioNames() {
    return list(FOLDER).stream()
        .map(path -> path.getFileName().toString())
        .filter(name -> !name.endsWith(PLAN))
        .map(name -> name.substring(0, name.length() - JSON.length()))
        .toList();
  }

  /** Names of the scenarios with a plan beside them. */
  public static List<String> plannedNames() {
    return list(FOLDER).stream()
        .map(path -> path.getFileName().toString())
        .filter(name -> name.endsWith(PLAN))
        .map(name -> name.substring(0, name.length() - PLAN.length()))
        .toList();
  }

  /** A scenario of the folder. */
  public static Scenario scenario(String name) {
    return read(name, text(FOLDER.resolve(name + JSON)));
  }

  /** A scenario out of a text, with the shipped catalogue. */
  public static Scenario read(String name, String text) {
    return value(name, ScenarioReader.read(text, CATALOGUE));
  }

  /** The plan beside a scenario. */
  public static LoadPlan plan(String name, Scenario scenario) {
    return value(name, PlanReader.read(text(FOLDER.resolve(name + PLAN)), scenario));
  }

  /** What both judges say of a plan. */
  public static CheckReport checked(String name) {
    Scenario scenario = scenario(name);
    return LoadPlanner.check(scenario, plan(name, scenario));
  }

  private static Catalogue catalogue() {
    List<NamedText> files =
        list(FOLDER.resolve("catalogue")).stream()
            .map(path -> new NamedText(path.getFileName().toString(), text(path)))
            .toList();
    return value("catalogue", CatalogueReader.read(files));
  }

  private static List<Path> list(Path folder) {
    try (Stream<Path> paths = Files.list(folder)) {
      return paths.filter(path -> path.toString().endsWith(JSON)).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String text(Path path) {
    try {
      return Files.readString(path);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static <T> T value(String name, Outcome<T> outcome) {
    return outcome.match(
        read -> {
          if (!read.warnings().text().isEmpty()) {
            throw new AssertionError(name + ": " + read.warnings().text());
          }
          return read.value();
        },
        refused -> {
          throw new AssertionError(name + ": " + refused.report().text());
        });
  }
}
