package kitstow.planner.android;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;

/** Runs {@link MeasuredSolve} in virtual machines that stand in for weaker ones. */
final class Fork {
  private final List<Path> classPath;
  private final Path folder;

  /**
   * A place to run.
   *
   * @param classPath jar of the planner and its dependencies
   * @param folder for the figures
   */
  Fork(List<Path> classPath, Path folder) {
    this.classPath = new ArrayList<>(classPath);
    this.classPath.add(SourceCode.testClasses());
    this.folder = folder;
  }

  /** Figures of a search of so many steps. */
  Figures steps(long seed, long steps, String... options) {
    return run(seed, steps, 0.0, options);
  }

  /** Figures of a search of so long. */
  Figures seconds(long seed, double seconds, String... options) {
    return run(seed, 0L, seconds, options);
  }

  private Figures run(long seed, long steps, double seconds, String... options) {
    try {
      Path out = Files.createTempFile(folder, "figures", ".properties");
      List<String> command = new ArrayList<>();
      command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
      command.addAll(List.of(options));
      command.addAll(List.of("-cp", SourceCode.classPath(classPath)));
      command.add(MeasuredSolve.class.getName());
      command.addAll(
          List.of(
              Long.toString(seed), Long.toString(steps), Double.toString(seconds), out.toString()));
      Path said = Files.createTempFile(folder, "said", ".txt");
      int exit =
          new ProcessBuilder(command)
              .redirectErrorStream(true)
              .redirectOutput(said.toFile())
              .start()
              .waitFor();
      if (exit != 0) {
        throw new AssertionError(command + " ended with " + exit + ": " + Files.readString(said));
      }
      Properties figures = new Properties();
      try (InputStream in = Files.newInputStream(out)) {
        figures.load(in);
      }
      return new Figures(figures);
    } catch (IOException e) {
      throw new AssertionError(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new AssertionError("interrupted", e);
    }
  }

  /** What one search found and took. */
  record Figures(Properties all) {
    String plan() {
      return all.getProperty("plan");
    }

    /** A figure by its name. */
    double number(String name) {
      return Double.parseDouble(all.getProperty(name));
    }
  }
}
