package kitstow.planner.android;

import java.io.IOException;
import java.io.StringWriter;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;

/** Java compiled while the tests run. */
final class SourceCode {
  private SourceCode() {}

  /** The class file of a test class. */
  static Path compiledTest(Class<?> type) {
    try {
      URI folder = type.getProtectionDomain().getCodeSource().getLocation().toURI();
      return Path.of(folder).resolve(type.getName().replace('.', '/') + ".class");
    } catch (URISyntaxException e) {
      throw new AssertionError(e);
    }
  }

  /**
   * Compiles one class and packs it.
   *
   * @param options options of the compiler
   * @param name name of the class
   * @param text its source
   * @param folder where to put classes and jar
   */
  static Path compile(List<String> options, String name, String text, Path folder) {
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    JavaFileObject source =
        new SimpleJavaFileObject(
            URI.create("string:///" + name.replace('.', '/') + ".java"),
            JavaFileObject.Kind.SOURCE) {
          @Override
          public CharSequence getCharContent(boolean ignoreEncodingErrors) {
            return text;
          }
        };
    try {
      Path classes = Files.createTempDirectory(folder, "classes");
      List<String> all = new ArrayList<>(options);
      all.addAll(List.of("-d", classes.toString()));
      StringWriter messages = new StringWriter();
      if (!compiler.getTask(messages, null, null, all, null, List.of(source)).call()) {
        throw new AssertionError("does not compile: " + messages);
      }
      return ClassFiles.pack(classes, classes.resolveSibling(classes.getFileName() + ".jar"));
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  /** Jars as a class path. */
  static String classPath(List<Path> jars) {
    return jars.stream()
        .map(Path::toString)
        .collect(Collectors.joining(System.getProperty("path.separator")));
  }
}
