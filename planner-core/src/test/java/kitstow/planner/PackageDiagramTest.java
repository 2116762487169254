package kitstow.planner;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The diagram of who may import whom says what the two layering tests hold. */
class PackageDiagramTest {
  private static final Path ROOT = Path.of("..");
  private static final List<String> LAYERS =
      List.of(
          "planner-core/src/test/java/kitstow/planner/LayeringTest.java",
          "tui/src/test/java/kitstow/tui/LayeringTest.java");
  private static final Pattern LAYER = Pattern.compile("ArchRule \\w+ =\\s+layer\\(([^)]*)\\)");
  private static final Pattern PACKAGE = Pattern.compile("\"(\\w+)\"");

  @Test
  void theDiagramAllowsWhatTheTestsAllow() throws IOException {
    Map<String, Set<String>> held = new TreeMap<>();
    for (String file : LAYERS) {
      Matcher layer = LAYER.matcher(Files.readString(ROOT.resolve(file)));
      while (layer.find()) {
        List<String> names =
            PACKAGE.matcher(layer.group(1)).results().map(name -> name.group(1)).toList();
        held.put(names.get(0), new TreeSet<>(names.subList(1, names.size())));
      }
    }
    assertThat(held).containsKeys("geometry", "json", "view", "runtime");
    assertThat(drawn()).isEqualTo(held);
  }

  /** What each package of the diagram may import, at first or second hand. */
  private static Map<String, Set<String>> drawn() throws IOException {
    String text = Files.readString(ROOT.resolve("DEVELOPERS.md"));
    int begin = text.indexOf("```\ngeometry <- ");
    assertThat(begin).isPositive();
    String diagram = text.substring(begin + 4, text.indexOf("\n```", begin + 4));
    Map<String, Set<String>> drawn = new TreeMap<>();
    diagram
        .lines()
        .filter(line -> line.contains("<-") && !line.startsWith("all of these"))
        .flatMap(line -> Pattern.compile(" {3,}").splitAsStream(line.trim()))
        .forEach(chain -> addChain(chain, drawn));
    for (Set<String> direct : drawn.values()) {
      int before;
      do {
        before = direct.size();
        for (String one : List.copyOf(direct)) {
          direct.addAll(drawn.getOrDefault(one, Set.of()));
        }
      } while (direct.size() > before);
    }
    return drawn;
  }

  private static void addChain(String chain, Map<String, Set<String>> drawn) {
    List<String> below = List.of();
    for (String link : chain.split(" <- ", -1)) {
      List<String> names = List.of(link.split(", ", -1));
      for (String name : names) {
        drawn.computeIfAbsent(name, key -> new TreeSet<>()).addAll(below);
      }
      below = names;
    }
  }
}
