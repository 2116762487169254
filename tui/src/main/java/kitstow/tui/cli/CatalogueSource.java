package kitstow.tui.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import kitstow.planner.json.CatalogueReader;
import kitstow.planner.json.NamedText;
import kitstow.planner.model.Catalogue;
import org.jspecify.annotations.Nullable;

/**
 * Finds the catalogue: the folder that was named, else a folder {@code catalogue} beside the
 * scenario if there are JSON files in it, else the copy inside the program.
 */
public final class CatalogueSource {
  /** The files of the copy inside the program. */
  static final List<String> BUILT_IN =
      List.of("utes.json", "bodies.json", "modules.json", "gear.json");

  private static final String RESOURCES = "/kitstow/catalogue/";
  private static final String BESIDE = "catalogue";

  private CatalogueSource() {}

  /** The catalogue; absent, with all its faults noted, where it cannot be used. */
  public static Optional<Catalogue> read(@Nullable Path named, Path scenario, InputFaults faults) {
    return CatalogueReader.read(texts(named, scenario, faults))
        .match(
            read -> {
              faults.inSeveral(read.warnings());
              return Optional.of(read.value());
            },
            refused -> {
              faults.inSeveral(refused.report());
              return Optional.empty();
            });
  }

  private static List<NamedText> texts(@Nullable Path named, Path scenario, InputFaults faults) {
    if (named != null) {
      List<Path> files = jsonFiles(named, faults);
      if (files.isEmpty()) {
        faults.file(
            named.toString(),
            "is no folder with JSON files",
            "name the folder of a catalogue, or leave --catalogue out for the built-in one");
      }
      return texts(files, faults);
    }
    Path beside = scenario.resolveSibling(BESIDE);
    List<Path> files = Files.isDirectory(beside) ? jsonFiles(beside, faults) : List.of();
    return files.isEmpty() ? builtIn() : texts(files, faults);
  }

  private static List<Path> jsonFiles(Path folder, InputFaults faults) {
    List<Path> files = new ArrayList<>();
    if (Files.isDirectory(folder)) {
      try (DirectoryStream<Path> found = Files.newDirectoryStream(folder, "*.json")) {
        found.forEach(files::add);
      } catch (IOException | DirectoryIteratorException e) {
        faults.file(folder.toString(), "cannot be read", "check that you may open the folder");
      }
    }
    Collections.sort(files);
    return files;
  }

  private static List<NamedText> texts(List<Path> files, InputFaults faults) {
    List<NamedText> texts = new ArrayList<>();
    for (Path file : files) {
      TextFile.read(file, faults)
          .ifPresent(text -> texts.add(new NamedText(file.toString(), text)));
    }
    return texts;
  }

  private static List<NamedText> builtIn() {
    List<NamedText> texts = new ArrayList<>();
    for (String name : BUILT_IN) {
      try (InputStream in = CatalogueSource.class.getResourceAsStream(RESOURCES + name)) {
        if (in == null) {
          throw new IllegalStateException("the program has no catalogue file " + name);
        }
        texts.add(new NamedText(name, new String(in.readAllBytes(), StandardCharsets.UTF_8)));
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    return texts;
  }
}
