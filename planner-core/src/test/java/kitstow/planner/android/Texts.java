package kitstow.planner.android;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The shipped files as an app would have them: as texts. */
final class Texts {
  private static final Path FOLDER = Path.of("..", "scenarios");

  private Texts() {}

  static String[] catalogue() {
    try (Stream<Path> files = Files.list(FOLDER.resolve("catalogue"))) {
      List<Path> sorted = files.filter(path -> path.toString().endsWith(".json")).sorted().toList();
      return sorted.stream().map(Texts::text).toArray(String[]::new);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  static String scenario(String name) {
    return text(FOLDER.resolve(name + ".json"));
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }
}
