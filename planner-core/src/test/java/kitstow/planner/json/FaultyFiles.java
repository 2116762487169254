package kitstow.planner.json;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kitstow.planner.model.Scenario;
import kitstow.planner.problem.Problem;
import kitstow.planner.problem.ProblemReport;

/**
 * The faulty files under {@code scenarios/invalid}: scenarios and catalogues by their name, and
 * plans in a folder beside the scenario they belong to, those called alone without it. All are read
 * against the small test catalogue.
 */
final class FaultyFiles {
  static final Path FOLDER = Path.of(System.getProperty("kitstow.scenarios"), "invalid");

  private static final Path PLANNED = FOLDER.resolve("plans").resolve("scenario.json");

  private FaultyFiles() {}

  /** What a file is read as; also the name of its schema. */
  enum Kind {
    SCENARIO,
    CATALOGUE,
    PLAN
  }

  /** All faulty files, with forward slashes, in order. */
  static List<String> names() {
    try (Stream<Path> files = Files.walk(FOLDER)) {
      return files
          .filter(file -> file.toString().endsWith(".json") && !file.equals(PLANNED))
          .map(file -> FOLDER.relativize(file).toString().replace('\\', '/'))
          .sorted()
          .collect(Collectors.toList());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static Kind kind(String name) {
    if (name.startsWith("plans/")) {
      return Kind.PLAN;
    }
    return name.startsWith("catalogue-") ? Kind.CATALOGUE : Kind.SCENARIO;
  }

  /** Whether a plan is read without a scenario. */
  static boolean isAlone(String name) {
    return name.startsWith("plans/alone-");
  }

  static String text(String name) {
    return text(FOLDER.resolve(name));
  }

  static String text(Path file) {
    try {
      return new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The scenario the faulty plans belong to. */
  static Scenario planned() {
    return TestFiles.value(ScenarioReader.read(text(PLANNED), TestFiles.catalogue()));
  }

  static Outcome<?> read(String name) {
    return switch (kind(name)) {
      case SCENARIO -> ScenarioReader.read(text(name), TestFiles.catalogue());
      case CATALOGUE -> CatalogueReader.read(List.of(new NamedText(name, text(name))));
      case PLAN ->
          isAlone(name)
              ? new Outcome.Refused<>(PlanReader.readAlone(text(name)))
              : PlanReader.read(text(name), planned());
    };
  }

  static List<Problem> problems(String name) {
    return read(name).match(Outcome.Read::warnings, Outcome.Refused::report).problems();
  }

  /** One line for each problem: severity, code and text. */
  static String listed(ProblemReport report) {
    StringBuilder lines = new StringBuilder();
    for (Problem problem : report.problems()) {
      lines
          .append(problem.severity())
          .append(' ')
          .append(problem.code())
          .append(' ')
          .append(problem.text())
          .append('\n');
    }
    return lines.toString();
  }
}
