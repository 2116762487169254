package kitstow.tui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Texts that must stay as they are; {@code -Dgolden.update=true} writes them anew. */
public final class Golden {
  private static final Path SOURCES = Path.of("src", "test", "resources", "kitstow", "tui");

  private static final Path SHIPPED = Path.of("..", "scenarios");

  private Golden() {}

  /** A text beside the tests. */
  public static void assertSame(String name, List<String> lines) {
    assertSame(SOURCES.resolve(name), lines);
  }

  /** A text beside the shipped scenarios. */
  static void assertShipped(String name, List<String> lines) {
    assertSame(SHIPPED.resolve(name), lines);
  }

  private static void assertSame(Path file, List<String> lines) {
    try {
      if (Boolean.getBoolean("golden.update")) {
        assertThat(System.getenv("CI")).as("goldens are not rewritten in CI").isNull();
        Files.writeString(file, String.join("\n", lines) + "\n");
      }
      assertThat(lines).containsExactlyElementsOf(Files.readAllLines(file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
