package kitstow.tui.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class CatalogueSourceTest {
  @Test
  void theListOfBuiltInFilesIsThatOfTheCatalogueFolder() throws IOException {
    Path folder = Path.of(System.getProperty("kitstow.scenarios"), "catalogue");
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files.map(file -> file.getFileName().toString()).filter(n -> n.endsWith(".json")))
          .containsExactlyInAnyOrderElementsOf(CatalogueSource.BUILT_IN);
    }
  }
}
