package kitstow.tui.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.model.RuleId;
import kitstow.planner.report.Finding;
import kitstow.planner.rules.SourceStatus;
import kitstow.tui.Shipped;
import org.junit.jupiter.api.Test;

class FindingsTextTest {
  @Test
  void whatDiffersOnlyByTheUnitIsToldOnce() {
    List<Finding> findings = new ArrayList<>();
    for (int unit = 1; unit <= 20; unit++) {
      findings.add(home("bag#" + unit, "Cement bag"));
    }
    findings.add(home("spade", "Spade"));
    List<String> lines = text().lines(findings);
    assertThat(lines).filteredOn(line -> line.startsWith("BROKEN")).hasSize(2);
    assertThat(String.join(" ", lines))
        .contains("Cement bag must come along and stays home. 20 times.")
        .contains("MUST_TAKE [bag#1 and 19 more]")
        .contains("Spade must come along and stays home.")
        .contains("MUST_TAKE [spade]");
  }

  private static FindingsText text() {
    Subjects subjects = new Subjects(Shipped.REMOTE.report().situation().loading());
    StateNames states = new StateNames(Shipped.REMOTE.report().states());
    return new FindingsText(subjects, states, new Page(100, /* ascii= */ true), /* all= */ true);
  }

  private static Finding home(String key, String title) {
    return new Finding(
        RuleId.MUST_TAKE,
        Finding.Severity.BROKEN,
        "",
        List.of(key),
        1.0,
        0.0,
        "left home",
        "the gear list",
        SourceStatus.BY_DEFINITION,
        title + " must come along and stays home",
        "make room for it",
        "");
  }
}
