package kitstow.planner.json;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import kitstow.planner.model.Catalogue;
import kitstow.planner.model.Scenario;

/** The small catalogue, scenario and plan of these tests; together they use every key. */
final class TestFiles {
  private TestFiles() {}

  static String text(String name) {
    try (InputStream in = TestFiles.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static Catalogue catalogue() {
    return value(CatalogueReader.read(List.of(new NamedText("c.json", text("catalogue.json")))));
  }

  static Scenario scenario() {
    return value(ScenarioReader.read(text("scenario.json"), catalogue()));
  }

  /** The value of an outcome that must be one. */
  static <T> T value(Outcome<T> outcome) {
    return outcome.match(
        Outcome.Read::value,
        refused -> {
          throw new AssertionError(refused.report().text());
        });
  }

  /** All problems of an outcome, faults or warnings, as text. */
  static String problems(Outcome<?> outcome) {
    return outcome.match(read -> read.warnings().text(), refused -> refused.report().text());
  }
}
