package kitstow.planner.android;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.MalformedURLException;
import java.net.URL;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Enumeration;
import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentSkipListSet;
import org.jspecify.annotations.Nullable;

/**
 * Loads an app's classes on the desktop and refuses every class of the desktop's platform that the
 * phone's does not have. The virtual machine asks this loader for {@code java} classes too, so
 * nothing goes round it; methods that a present class lacks are for {@link Linker}.
 */
final class PhoneLoader extends ClassLoader {
  /** The virtual machine's own helpers for reflection, which no app refers to. */
  private static final String MACHINERY = "jdk.internal.reflect.";

  private final ClassFiles app;
  private final ClassFiles platform;
  private final List<Path> resources;
  private final Set<String> loaded = ConcurrentHashMap.newKeySet();
  private final SortedSet<String> refused = new ConcurrentSkipListSet<>();

  /**
   * A loader of an app.
   *
   * @param app its classes and those of its libraries
   * @param platform classes of the phone's platform
   * @param resources jars in which everything else is looked up
   */
  PhoneLoader(ClassFiles app, ClassFiles platform, List<Path> resources) {
    super(null);
    this.app = app;
    this.platform = platform;
    this.resources = List.copyOf(resources);
  }

  /** The app's classes that were loaded, by name with slashes. */
  SortedSet<String> loaded() {
    return new TreeSet<>(loaded);
  }

  /** What was asked for and is neither the app's nor the phone's, by name with dots. */
  SortedSet<String> refused() {
    return refused;
  }

  @Override
  protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
    synchronized (getClassLoadingLock(name)) {
      Class<?> known = findLoadedClass(name);
      if (known != null) {
        return known;
      }
      String slashed = name.replace('.', '/');
      byte[] bytes = app.bytes(slashed).orElse(null);
      if (bytes != null) {
        loaded.add(slashed);
        return defineClass(name, bytes, 0, bytes.length);
      }
      if (platform.has(slashed) || name.startsWith(MACHINERY)) {
        return Class.forName(name, false, ClassLoader.getPlatformClassLoader());
      }
      refused.add(name);
      throw new ClassNotFoundException("not on the phone: " + name);
    }
  }

  @Override
  public @Nullable URL getResource(String name) {
    Enumeration<URL> all = getResources(name);
    return all.hasMoreElements() ? all.nextElement() : null;
  }

  @Override
  public Enumeration<URL> getResources(String name) {
    List<URL> found = new ArrayList<>();
    for (Path jar : resources) {
      try {
        URL url = new URL("jar:" + jar.toUri() + "!/" + name);
        if (isThere(url)) {
          found.add(url);
        }
      } catch (MalformedURLException e) {
        throw new UncheckedIOException(e);
      }
    }
    return Collections.enumeration(found);
  }

  private static boolean isThere(URL url) {
    try (InputStream in = url.openStream()) {
      return in.read() >= 0;
    } catch (IOException e) {
      return false;
    }
  }
}
