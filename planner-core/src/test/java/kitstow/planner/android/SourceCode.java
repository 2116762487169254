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
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/** Java compiled while the tests run. */
final class SourceCode {
  private static final JavaCompiler COMPILER = ToolProvider.getSystemJavaCompiler();

  private SourceCode() {}

  /** The folder of compiled tests. */
  static Path testClasses() {
    try {
      return Path.of(SourceCode.class.getProtectionDomain().getCodeSource().getLocation().toURI());
    } catch (URISyntaxException e) {
      throw new AssertionError(e);
    }
  }

  /** The class file of a test class. */
  static Path compiledTest(Class<?> type) {
    return testClasses().resolve(type.getName().replace('.', '/') + ".class");
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
    JavaFileObject source =
        new SimpleJavaFileObject(
            URI.create("string:///" + name.replace('.', '/') + ".java"),
            JavaFileObject.Kind.SOURCE) {
          @Override
          public CharSequence getCharContent(boolean ignoreEncodingErrors) {
            return text;
          }
        };
    return compile(options, List.of(source), folder);
  }

  /** Compiles sources of the tests again, with other options, and packs them. */
  static Path compileAgain(List<String> options, List<Class<?>> types, Path folder) {
    List<JavaFileObject> sources = new ArrayList<>();
    StandardJavaFileManager files = COMPILER.getStandardFileManager(null, null, null);
    for (Class<?> type : types) {
      Path source = Path.of("src/test/java", type.getName().replace('.', '/') + ".java");
      files.getJavaFileObjects(source).forEach(sources::add);
    }
    return compile(options, sources, folder);
  }

  private static Path compile(List<String> options, List<JavaFileObject> sources, Path folder) {
    try {
      Path classes = Files.createTempDirectory(folder, "classes");
      List<String> all = new ArrayList<>(options);
      all.addAll(List.of("-proc:none", "-d", classes.toString()));
      StringWriter messages = new StringWriter();
      if (!COMPILER.getTask(messages, null, null, all, null, sources).call()) {
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
