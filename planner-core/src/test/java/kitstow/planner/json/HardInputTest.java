package kitstow.planner.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Consumer;
import kitstow.planner.model.Catalogue;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Scenario;
import kitstow.planner.problem.Code;
import kitstow.planner.problem.Problem;
import kitstow.planner.problem.ProblemReport;
import kitstow.planner.problem.Severity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Input that is meant to hurt is refused with a problem, never with an exception. */
class HardInputTest {
  private static final int SEEDS = 300;

  private static List<Problem> problems(String text) {
    return ScenarioReader.read(text, Catalogue.EMPTY)
        .match(Outcome.Read::warnings, Outcome.Refused::report)
        .problems();
  }

  private static String repeated(String part, int times) {
    return String.join("", Collections.nCopies(times, part));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "``|1|1|the text ends too early",
        "{\"a\": 1|1|8|the text ends too early",
        "{\"a\" 1}|1|7|a colon is missing after a key",
        "{\"a\": }|1|7|a value is missing",
        "{\"a\": 1,}|1|10|a key in double quotes is missing",
        "{\"a\": 'b'}|1|8|there is something that JSON does not allow",
        "{\"a\": NaN}|1|7|there is something that JSON does not allow",
        "{\"a\": 012}|1|7|there is something that JSON does not allow",
        "{\"a\": 1} x|1|11|there is something that JSON does not allow",
        "// no|1|2|there is something that JSON does not allow",
        "{\"a\": \"\\x\"}|1|10|a text has an escape that JSON does not know",
      })
  void syntaxFaultSaysWhereAndWhat(String text, int line, int column, String what) {
    List<Problem> problems = problems(text);
    assertThat(problems).hasSize(1);
    assertThat(problems.get(0).code()).isEqualTo(Code.NOT_JSON);
    assertThat(problems.get(0).message())
        .contains("line " + line + ", column " + column + ": ")
        .contains(what);
  }

  @Test
  void lineEndInsideATextIsASyntaxFault() {
    assertThat(problems("{\"title\": \"two\nlines\"}").get(0).message())
        .contains("control character");
  }

  @Test
  void deepNestingDoesNotOverflowTheStack() {
    for (String open : List.of("[", "{\"a\":")) {
      assertThat(problems(repeated(open, 1_000_000)))
          .extracting(Problem::code)
          .containsExactly(Code.NESTED_TOO_DEEP);
    }
  }

  @Test
  void overlongTextIsNotReadAtAll() {
    String text = repeated(" ", TreeReader.MOST_CHARACTERS + 1);
    assertThat(problems(text)).extracting(Problem::code).containsExactly(Code.TOO_LONG);
  }

  @Test
  void tooManyValuesEndTheReading() {
    String text = "[" + repeated("1,", TreeReader.MOST_VALUES) + "1]";
    assertThat(problems(text)).extracting(Problem::code).containsExactly(Code.TOO_LONG);
  }

  @Test
  void problemsAreCappedAndTheLastSaysHowManyAreLeftOut() {
    String marks = "\"schemaVersion\": 1, \"kind\": \"scenario\", \"x\": 1";
    StringBuilder text = new StringBuilder("{").append(marks);
    for (int i = 0; i < 30_000; i++) {
      text.append(", \"unknown-").append(i).append("\": 1");
    }
    List<Problem> problems = problems(text.append('}').toString());
    assertThat(problems).hasSize(ProblemReport.MOST_PROBLEMS + 1);
    Problem last = problems.get(problems.size() - 1);
    assertThat(last.code()).isEqualTo(Code.MORE_PROBLEMS);
    assertThat(last.message()).contains(" more problems");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "1e400",
        "-1e400",
        "1e2147483647",
        "1e2147483648",
        "-1e9999999999",
        "123456789012345678901234567890",
        "-0.0",
        "1e-400",
        "0.0000000000000000000000000000001"
      })
  void numberBeyondMeasureIsOneFault(String number) {
    String text =
        TestFiles.text("scenario.json").replace("\"massKg\": 85,", "\"massKg\": " + number + ",");
    Outcome<Scenario> outcome = ScenarioReader.read(text, TestFiles.catalogue());
    assertThat(TestFiles.problems(outcome))
        .startsWith("$.trip.people[0].massKg: is " + number.substring(0, 2))
        .containsOnlyOnce("\n");
  }

  @ParameterizedTest
  @CsvSource({"1.25e2, 125000", "85.000, 85000", "0.001, 1", "400, 400000"})
  void wholeGramsAreReadHoweverTheyAreWritten(String number, long massG) {
    String text =
        TestFiles.text("scenario.json").replace("\"massKg\": 85,", "\"massKg\": " + number + ",");
    Scenario scenario = TestFiles.value(ScenarioReader.read(text, TestFiles.catalogue()));
    assertThat(scenario.trip().people().get(0).mass().massG()).isEqualTo(massG);
  }

  @ParameterizedTest
  @ValueSource(strings = {"0e2147483647", "0e-2147483647", "-0", "0.000000"})
  void zeroIsZeroHoweverItIsWritten(String zero) {
    String text = TestFiles.text("scenario.json").replace("\"days\": 1.5", "\"days\": " + zero);
    Scenario scenario = TestFiles.value(ScenarioReader.read(text, TestFiles.catalogue()));
    assertThat(scenario.trip().legs().get(0).days()).isEqualTo(0.0);
  }

  @Test
  void idsOfTwoCatalogueFilesAreHeldAgainstEachOther() {
    String text = TestFiles.text("catalogue.json");
    String problems =
        TestFiles.problems(
            CatalogueReader.read(
                List.of(new NamedText("one.json", text), new NamedText("two.json", text))));
    assertThat(problems)
        .contains("two.json $.gear[0].id: is \"fridge\", which is taken at one.json $.gear[0].id. ")
        .doesNotContain("\none.json");
  }

  private static LoadPlan nothingPlaced(Scenario scenario) {
    return new LoadPlan(scenario.id(), Map.of(), List.of(), LoadPlan.Origin.HAND);
  }

  /**
   * Texts with pieces changed are refused with problems that say where and what to do, or read to
   * something that can be carried out and is the same when it is written and read again.
   */
  @Test
  void mangledTextsAreReadForGoodOrRefusedWithProblems() {
    int[] read = new int[3];
    String scenario = TestFiles.text("scenario.json");
    String plan = TestFiles.text("plan.json");
    String catalogue = TestFiles.text("catalogue.json");
    Catalogue entries = TestFiles.catalogue();
    Scenario whole = TestFiles.scenario();
    for (int seed = 0; seed < SEEDS; seed++) {
      Random random = new Random(seed);
      String as = "seed " + seed;
      read[0] +=
          readable(
              as, ScenarioReader.read(mangled(scenario, random), entries), HardInputTest::same);
      read[1] +=
          readable(as, PlanReader.read(mangled(plan, random), whole), one -> same(whole, one));
      NamedText file = new NamedText("c", mangled(catalogue, random));
      read[2] +=
          readable(
              as, CatalogueReader.read(List.of(file)), one -> assertThat(one.utes()).isNotEmpty());
    }
    assertThat(read).as("texts that could be read").doesNotContain(0).doesNotContain(SEEDS);
  }

  /** One if a text was read, to something sound; none if it was refused, with its problems. */
  private static <T> int readable(String as, Outcome<T> outcome, Consumer<T> sound) {
    return outcome.match(
        read -> {
          sound.accept(read.value());
          return 1;
        },
        refused -> {
          List<Problem> problems = refused.report().problems();
          assertThat(problems).as(as).isNotEmpty();
          assertThat(problems).as(as).anyMatch(one -> one.severity() == Severity.ERROR);
          for (Problem problem : problems) {
            assertThat(problem.jsonPath()).as(as).matches("(c )?\\$.*");
            assertThat(problem.message()).as(as).isNotEmpty();
            assertThat(problem.hint()).as(as).isNotEmpty();
          }
          return 0;
        });
  }

  private static void same(Scenario scenario) {
    assertThat(Loading.of(scenario, nothingPlaced(scenario)).bodies()).isNotEmpty();
    assertThat(
            TestFiles.value(ScenarioReader.read(ScenarioWriter.write(scenario), Catalogue.EMPTY)))
        .isEqualTo(scenario);
  }

  private static void same(Scenario scenario, LoadPlan plan) {
    assertThat(Loading.of(scenario, plan).bodies()).isNotEmpty();
    assertThat(TestFiles.value(PlanReader.read(PlanWriter.write(plan), scenario))).isEqualTo(plan);
  }

  /** Changes words and numbers so that the text mostly stays JSON. */
  private static String mangled(String text, Random random) {
    StringBuilder mangled = new StringBuilder(text);
    List<String> words =
        List.of("null", "-1", "1e99", "[]", "{}", "\"\"", "true", "\"x\"", "0", "\"tray\"");
    for (int i = 0; i < 1 + random.nextInt(4); i++) {
      int colon = mangled.indexOf(": ", random.nextInt(mangled.length()));
      if (colon < 0) {
        continue;
      }
      int end = colon + 2;
      while (end < mangled.length() && ",\n}]".indexOf(mangled.charAt(end)) < 0) {
        end++;
      }
      char first = mangled.charAt(colon + 2);
      if (first != '{' && first != '[') {
        mangled.replace(colon + 2, end, words.get(random.nextInt(words.size())));
      } else if (random.nextInt(8) == 0) {
        mangled.deleteCharAt(colon + 2);
      }
    }
    return mangled.toString();
  }
}
