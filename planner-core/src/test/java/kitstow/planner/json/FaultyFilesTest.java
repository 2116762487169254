package kitstow.planner.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import kitstow.planner.problem.Code;
import kitstow.planner.problem.Problem;
import kitstow.planner.problem.ProblemReport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Each faulty file has the full list of its problems beside it. The lists are written anew with
 * {@code -Dgolden.update=true} and read as a diff then.
 */
class FaultyFilesTest {
  /** A file for it would have to be longer than the 16 MiB a text may have; tested on its own. */
  private static final Set<Code> WITHOUT_FILE = EnumSet.of(Code.TOO_LONG);

  static List<String> names() {
    return FaultyFiles.names();
  }

  @ParameterizedTest
  @MethodSource("names")
  void everyProblemIsFoundAndNoOther(String name) throws IOException {
    Path golden =
        FaultyFiles.FOLDER.resolve(name.substring(0, name.length() - 5) + ".problems.txt");
    String found = FaultyFiles.listed(new ProblemReport(FaultyFiles.problems(name)));
    if (Boolean.getBoolean("golden.update")) {
      assertThat(System.getenv("CI")).as("goldens are not rewritten in CI").isNull();
      Files.write(golden, found.getBytes(StandardCharsets.UTF_8));
    }
    assertThat(found).isNotEmpty().isEqualTo(FaultyFiles.text(golden));
  }

  @Test
  void everyCodeHasAFile() {
    Set<Code> found = EnumSet.copyOf(WITHOUT_FILE);
    for (String name : FaultyFiles.names()) {
      FaultyFiles.problems(name).forEach(problem -> found.add(problem.code()));
    }
    assertThat(found).containsExactlyInAnyOrder(Code.values());
  }

  @Test
  void whatAPlanAloneShowsIsAlsoFoundWithItsScenario() {
    int shown = 0;
    for (String name : FaultyFiles.names()) {
      if (FaultyFiles.kind(name) == FaultyFiles.Kind.PLAN && !FaultyFiles.isAlone(name)) {
        String text = FaultyFiles.text(name);
        List<Problem> alone = PlanReader.readAlone(text).problems();
        List<Problem> together =
            PlanReader.read(text, FaultyFiles.planned())
                .match(Outcome.Read::warnings, Outcome.Refused::report)
                .problems();
        shown += alone.size();
        assertThat(together).as(name).containsAll(alone);
      }
    }
    assertThat(shown).isGreaterThan(20);
    assertThat(PlanReader.readAlone(TestFiles.text("plan.json")).problems()).isEmpty();
  }

  @Test
  void noFaultIsInTwoFiles() {
    Map<String, String> fileByFault = new HashMap<>();
    for (String name : FaultyFiles.names()) {
      for (Problem problem : FaultyFiles.problems(name)) {
        String kind = FaultyFiles.isAlone(name) ? "plan alone" : "" + FaultyFiles.kind(name);
        String fault = kind + " " + problem.code() + " " + problem.jsonPath();
        assertThat(fileByFault.putIfAbsent(fault, name)).as(fault + " in " + name).isNull();
      }
    }
  }

  @Test
  void thereAreManyFilesAndManyWithSeveralFaults() {
    long several =
        FaultyFiles.names().stream().filter(name -> FaultyFiles.problems(name).size() >= 3).count();
    assertThat(FaultyFiles.names()).hasSizeGreaterThanOrEqualTo(40);
    assertThat(several).isGreaterThanOrEqualTo(15);
  }

  @Test
  void everyTextHasFactRuleAndHintInPlainWords() {
    for (String name : FaultyFiles.names()) {
      for (Problem problem : FaultyFiles.problems(name)) {
        assertThat(problem.message()).as(name).isNotEmpty().doesNotEndWith(".");
        assertThat(problem.hint()).as(name).isNotEmpty().doesNotEndWith(".");
        assertThat(problem.text())
            .as(name)
            .doesNotContainPattern("[A-Za-z]+(Exception|Node|Reader|Optional)\\b")
            .doesNotContain("kitstow.", "java.", "gson", "@")
            .doesNotContainPattern("\\p{Cntrl}");
      }
    }
  }
}
