package kitstow.planner.problem;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The shape of paths and texts. */
class ProblemTest {
  @Test
  void textIsPathFactRuleAndNextStep() {
    Problem problem =
        new Problem(
            Code.OUT_OF_RANGE,
            JsonPath.root().key("gear").index(3).key("massKg").toString(),
            Severity.ERROR,
            "is -5 kg, must be above zero",
            "give the mass in kilograms, e.g. 12.5");
    assertThat(problem.text())
        .isEqualTo(
            "$.gear[3].massKg: is -5 kg, must be above zero."
                + " Hint: give the mass in kilograms, e.g. 12.5");
    assertThat(new ProblemReport(List.of(problem, problem)).text())
        .isEqualTo(problem.text() + "\n" + problem.text() + "\n");
  }

  @Test
  void pathOfOneFileOfSeveralBeginsWithItsName() {
    assertThat(JsonPath.rootOf("gear.json").key("gear").index(0))
        .hasToString("gear.json $.gear[0]");
  }

  @Test
  void pathIsSafeToPrintWhateverTheKey() {
    String odd = "a b\n\u001b[31m'";
    assertThat(JsonPath.root().key(odd)).hasToString("$['a b??[31m?']");
    assertThat(JsonPath.root().key("")).hasToString("$['']");
    String longKey = String.join("", Collections.nCopies(500, "x"));
    assertThat(JsonPath.root().key(longKey).toString()).hasSizeLessThan(80).endsWith("...']");
  }
}
