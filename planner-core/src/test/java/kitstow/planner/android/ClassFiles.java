package kitstow.planner.android;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/** The classes of some jars, by their name with slashes. */
final class ClassFiles {
  private static final String CLASS = ".class";

  private final Map<String, byte[]> bytesByName = new LinkedHashMap<>();

  static ClassFiles ofJars(List<Path> jars) {
    ClassFiles classes = new ClassFiles();
    for (Path jar : jars) {
      try (ZipFile zip = new ZipFile(jar.toFile())) {
        for (ZipEntry entry :
            (Iterable<ZipEntry>) zip.stream().map(ZipEntry.class::cast)::iterator) {
          String name = entry.getName();
          if (name.endsWith(CLASS)) {
            classes.bytesByName.put(
                name.substring(0, name.length() - CLASS.length()),
                zip.getInputStream(entry).readAllBytes());
          }
        }
      } catch (IOException e) {
        throw new AssertionError("cannot read " + jar, e);
      }
    }
    return classes;
  }

  Optional<byte[]> bytes(String name) {
    return Optional.ofNullable(bytesByName.get(name));
  }

  boolean has(String name) {
    return bytesByName.containsKey(name);
  }

  List<String> names() {
    return new ArrayList<>(bytesByName.keySet());
  }

  /** Packs a folder as a jar, as the build does with the same folder. */
  static Path pack(Path folder, Path jar) {
    try (Stream<Path> files = Files.walk(folder);
        OutputStream out = Files.newOutputStream(jar);
        ZipOutputStream zip = new ZipOutputStream(out)) {
      for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
        zip.putNextEntry(new ZipEntry(folder.relativize(file).toString().replace('\\', '/')));
        zip.write(Files.readAllBytes(file));
        zip.closeEntry();
      }
      return jar;
    } catch (IOException e) {
      throw new AssertionError("cannot pack " + folder, e);
    }
  }

  /**
   * Copies what is wanted of some jars into one; of two entries of a name the first stays, as where
   * apps are packed.
   *
   * @param wanted asked with the name of each entry
   */
  static Path merge(List<Path> jars, Predicate<String> wanted, Path jar) {
    Set<String> written = new HashSet<>();
    try (OutputStream out = Files.newOutputStream(jar);
        ZipOutputStream merged = new ZipOutputStream(out)) {
      for (Path each : jars) {
        try (ZipFile zip = new ZipFile(each.toFile())) {
          for (ZipEntry entry : Collections.list(zip.entries())) {
            if (!entry.isDirectory()
                && wanted.test(entry.getName())
                && written.add(entry.getName())) {
              merged.putNextEntry(new ZipEntry(entry.getName()));
              zip.getInputStream(entry).transferTo(merged);
              merged.closeEntry();
            }
          }
        }
      }
      return jar;
    } catch (IOException e) {
      throw new AssertionError("cannot merge " + jars, e);
    }
  }
}
