package kitstow.planner.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import kitstow.planner.json.FaultyFiles.Kind;
import kitstow.planner.problem.Code;
import kitstow.planner.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The schemas and the readers say the same of every file, as far as a schema can see. */
class SchemaTest {
  /** Faults that need more than one value to be seen, or the text itself. */
  private static final Set<Code> UNSEEN =
      EnumSet.of(
          Code.TOO_LONG,
          Code.DUPLICATE_KEY,
          Code.DUPLICATE_ID,
          Code.ID_IN_CATALOGUE,
          Code.UNKNOWN_REFERENCE,
          Code.CIRCULAR_MODULES,
          Code.UNUSED_ENTRY,
          Code.CONTENT_ABOVE_MASS,
          Code.HEAVIER_THAN_LEAD,
          Code.MOVES_WITHOUT_SLIDE,
          Code.BARS_OUT_OF_ORDER,
          Code.BAR_OUTSIDE_SPACE,
          Code.OUTSIDE_HOST,
          Code.ENDS_OUT_OF_ORDER,
          Code.ABOVE_CAPACITY,
          Code.GROWTH_WITHOUT_LIMIT,
          Code.LID_NOT_ON_TOP,
          Code.BALL_ABOVE_TRAILER,
          Code.SEAT_TAKEN,
          Code.CANOPY_WITHOUT_TRAY,
          Code.NOT_FITTED,
          Code.STOWED_PART,
          Code.NO_TOWING,
          Code.NOT_MEASURED,
          Code.WRONG_SUPPLY,
          Code.PIN_CONTRADICTION,
          Code.WRONG_SCENARIO,
          Code.BAY_TAKEN,
          Code.BAY_NOT_LISTED,
          Code.NOT_THERE_IN_PLAN,
          Code.NO_SUCH_UNIT_OR_SHAPE,
          Code.PLACED_TWICE,
          Code.MORE_PROBLEMS);

  /** Faults after which the reader stops, so that the schema finds more. */
  private static final Set<Code> STOPS =
      EnumSet.of(
          Code.NOT_JSON,
          Code.NESTED_TOO_DEEP,
          Code.WRONG_KIND,
          Code.WRONG_SCHEMA_VERSION,
          Code.MORE_PROBLEMS);

  private static final String UNKNOWN = "zzzzzzzzzzzz";

  static List<String> names() {
    return FaultyFiles.names();
  }

  @ParameterizedTest
  @MethodSource("names")
  void schemaFindsWhatItCanSeeAndNothingElse(String name) {
    List<Problem> problems = FaultyFiles.problems(name);
    Set<Code> codes = EnumSet.noneOf(Code.class);
    problems.forEach(problem -> codes.add(problem.code()));
    if (codes.contains(Code.NOT_JSON)) {
      return;
    }
    Set<String> found = Schemas.faultyPaths(FaultyFiles.kind(name), FaultyFiles.text(name));
    boolean stopped = codes.stream().anyMatch(STOPS::contains) || !headIsGood(problems);
    Set<String> unexplained = new TreeSet<>(found);
    for (Problem problem : problems) {
      String path = problem.jsonPath().substring(problem.jsonPath().indexOf('$'));
      List<String> same = List.of(path, parent(path));
      if (seen(problem, path)) {
        assertThat(found).as(problem.text()).containsAnyElementsOf(same);
      }
      same.forEach(unexplained::remove);
    }
    if (!stopped) {
      assertThat(unexplained).as("only the schema finds fault").isEmpty();
    }
  }

  private static boolean headIsGood(List<Problem> problems) {
    return problems.stream()
        .noneMatch(p -> p.jsonPath().equals("$") || p.jsonPath().equals("$.schemaVersion"));
  }

  /** Some faults are seen in one place and not in another: a list of names, or of objects. */
  private static boolean seen(Problem problem, String path) {
    return switch (problem.code()) {
      case LISTED_TWICE -> !path.endsWith(".kind") && !path.contains(".order[");
      case MISSING_KEY -> !path.endsWith(".unit");
      case NESTED_TOO_DEEP -> false;
      default -> !UNSEEN.contains(problem.code());
    };
  }

  private static String parent(String path) {
    int end = Math.max(path.lastIndexOf('.'), path.lastIndexOf('['));
    return end < 0 ? path : path.substring(0, end);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
  void schemaAcceptsWrittenScenarios(long seed) {
    String text = ScenarioWriter.write(new ScenarioGenerator(seed).scenario());
    assertThat(Schemas.faultyPaths(Kind.SCENARIO, text)).isEmpty();
  }

  @Test
  void schemasAcceptTheFilesWithEveryKey() {
    everyKeyFiles()
        .forEach(
            (kind, text) -> assertThat(Schemas.faultyPaths(kind, text)).as(kind.name()).isEmpty());
  }

  @Test
  void readersAcceptEveryKeyOfTheSchemas() {
    Set<String> used = new TreeSet<>();
    everyKeyFiles()
        .forEach(
            (kind, text) ->
                Schemas.visit(
                    kind,
                    JsonParser.parseString(text),
                    (name, schema, object) ->
                        object.keySet().forEach(key -> used.add(name + "." + key))));
    Set<String> unused = Schemas.allKeys();
    unused.removeAll(used);
    assertThat(unused).isEmpty();
  }

  @Test
  void schemasHaveEveryKeyOfTheReaders() {
    everyKeyFiles().forEach(SchemaTest::compareKeys);
  }

  /** Puts an unknown key into one object of each sort; the reader's hint lists what it knows. */
  private static void compareKeys(Kind kind, String text) {
    JsonElement tree = JsonParser.parseString(text);
    Set<String> done = new LinkedHashSet<>();
    Schemas.visit(
        kind,
        tree,
        (name, schema, object) -> {
          if (done.add(name)) {
            object.addProperty(UNKNOWN, 1);
            assertThat(knownKeys(read(kind, tree.toString())))
                .as(name)
                .isEqualTo(new TreeSet<>(propertiesOf(schema)));
            object.remove(UNKNOWN);
          }
        });
  }

  private static Set<String> propertiesOf(JsonObject schema) {
    return schema.getAsJsonObject("properties").keySet();
  }

  private static Set<String> knownKeys(Outcome<?> outcome) {
    String problems = TestFiles.problems(outcome);
    assertThat(problems).contains(UNKNOWN).doesNotContain(" more\n");
    String keys = problems.substring(problems.indexOf("known here are ") + 15).trim();
    return new TreeSet<>(List.of(keys.split(", ", -1)));
  }

  private static Map<Kind, String> everyKeyFiles() {
    return Map.of(
        Kind.CATALOGUE, TestFiles.text("catalogue.json"),
        Kind.SCENARIO, TestFiles.text("scenario.json"),
        Kind.PLAN, TestFiles.text("plan.json"));
  }

  private static Outcome<?> read(Kind kind, String text) {
    return switch (kind) {
      case CATALOGUE -> CatalogueReader.read(List.of(new NamedText("c.json", text)));
      case SCENARIO -> ScenarioReader.read(text, TestFiles.catalogue());
      case PLAN -> PlanReader.read(text, TestFiles.scenario());
    };
  }
}
