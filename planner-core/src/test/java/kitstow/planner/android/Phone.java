package kitstow.planner.android;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;

/** The platform of a phone at the lowest level, as far as a desktop can stand in for it. */
final class Phone {
  private static final Path FOLDER = Path.of("target", "android");

  private final Path stubs;
  private final ClassFiles platform;

  private Phone(Path stubs) {
    this.stubs = stubs;
    this.platform = ClassFiles.ofJars(List.of(stubs));
  }

  /** The platform that the build has fetched the description of. */
  static Phone atMinimum(Path temporary) {
    Path stubs = temporary.resolve("platform.jar");
    StubJar.write(PlatformTypes.read(FOLDER.resolve("platform.expediter")), stubs);
    return new Phone(stubs);
  }

  /** Run-time dependencies of the library, all that an app takes along with it. */
  static List<Path> dependencies() {
    try {
      String line = Files.readString(FOLDER.resolve("dependencies.txt")).trim();
      List<Path> jars = new ArrayList<>();
      for (String jar : line.split(System.getProperty("path.separator"), -1)) {
        jars.add(Path.of(jar));
      }
      return jars;
    } catch (IOException e) {
      throw new AssertionError("run through Maven once: it lists the dependencies", e);
    }
  }

  Path stubs() {
    return stubs;
  }

  ClassFiles platform() {
    return platform;
  }

  /**
   * What a run came to.
   *
   * @param result what the method returned
   * @param failure what it threw
   * @param loaded classes of the app that were loaded
   * @param refused classes asked for that are neither the app's nor the platform's
   * @param unlinked what the loaded classes refer to and is not there
   */
  record Run(
      Optional<Object> result,
      Optional<Throwable> failure,
      SortedSet<String> loaded,
      SortedSet<String> refused,
      SortedSet<String> unlinked) {
    /** Everything that would go wrong on the phone. */
    List<String> faults() {
      List<String> faults = new ArrayList<>();
      failure.ifPresent(thrown -> faults.add("failed: " + thrown));
      refused.forEach(name -> faults.add("refused: " + name));
      unlinked.forEach(name -> faults.add("not there: " + name));
      return faults;
    }
  }

  /**
   * Calls a static method of an app, then links all classes that this has loaded.
   *
   * @param desugared jars of the app's classes and libraries
   * @param resources jars with the files that are not classes
   * @param arguments values of the platform's own types
   */
  Run call(
      List<Path> desugared,
      List<Path> resources,
      String className,
      String method,
      Object... arguments) {
    ClassFiles app = ClassFiles.ofJars(desugared);
    PhoneLoader loader = new PhoneLoader(app, platform, resources);
    Optional<Object> result = Optional.empty();
    Optional<Throwable> failure = Optional.empty();
    Thread thread = Thread.currentThread();
    ClassLoader before = thread.getContextClassLoader();
    thread.setContextClassLoader(loader);
    try {
      result = Optional.ofNullable(method(loader, className, method).invoke(null, arguments));
    } catch (InvocationTargetException e) {
      failure = Optional.of(e.getCause());
    } catch (ReflectiveOperationException | LinkageError e) {
      failure = Optional.of(e);
    } finally {
      thread.setContextClassLoader(before);
    }
    return new Run(
        result,
        failure,
        loader.loaded(),
        loader.refused(),
        new Linker(app, platform).unlinked(loader.loaded()));
  }

  private static java.lang.reflect.Method method(ClassLoader loader, String className, String name)
      throws ClassNotFoundException {
    return Arrays.stream(loader.loadClass(className).getMethods())
        .filter(method -> method.getName().equals(name))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no public method " + name + " in " + className));
  }
}
