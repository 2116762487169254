package kitstow.planner.catalogue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import kitstow.planner.json.CatalogueReader;
import kitstow.planner.json.NamedText;
import kitstow.planner.model.Catalogue;

/** The catalogue as it is shipped, read with the reader users have. */
final class ShippedCatalogue {
  private static final Path FOLDER = Path.of("..", "scenarios", "catalogue");

  private ShippedCatalogue() {}

  static Catalogue read() {
    return CatalogueReader.read(files())
        .match(
            read -> read.value(),
            refused -> {
              throw new AssertionError(refused.report().toString());
            });
  }

  /** All files of the catalogue, in the order of their names. */
  static List<NamedText> files() {
    try (Stream<Path> paths = Files.list(FOLDER)) {
      return paths
          .filter(path -> path.toString().endsWith(".json"))
          .sorted()
          .map(path -> new NamedText(path.getFileName().toString(), text(path)))
          .toList();
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
}
