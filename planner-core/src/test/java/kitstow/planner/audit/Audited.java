package kitstow.planner.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.RuleId;
import kitstow.planner.testkit.ByRules;
import kitstow.planner.testkit.RigBuilder;
import kitstow.planner.testkit.StateBuilder;

/**
 * Audits for tests, told as lines such as {@code BEARING lower}. Every one is held against the
 * rules, so a case that breaks a rule by the smallest amount tests both judges.
 */
final class Audited {
  private Audited() {}

  /** What is broken on the road with everything at its nominal mass. */
  static List<String> broken(RigBuilder rig) {
    Loading loading = rig.load();
    return broken(loading, StateBuilder.driving(loading).build());
  }

  /** What is broken in some states. */
  static List<String> broken(Loading loading, LoadState... states) {
    List<String> lines = new ArrayList<>();
    for (AuditFinding finding : Audit.of(loading, List.of(states))) {
      lines.add(finding.rule() + " " + String.join(" ", finding.subjectIds()));
    }
    assertThat(ByRules.broken(loading, List.of(states)))
        .as("what the rules find broken, against the audit")
        .isEqualTo(new TreeSet<>(lines));
    return lines;
  }

  /** The one finding of a rule on the road. */
  static AuditFinding finding(RigBuilder rig, RuleId rule) {
    Loading loading = rig.load();
    return finding(rule, loading, StateBuilder.driving(loading).build());
  }

  /** The one finding of a rule. */
  static AuditFinding finding(RuleId rule, Loading loading, LoadState... states) {
    List<AuditFinding> found = new ArrayList<>(Audit.of(loading, List.of(states)));
    found.removeIf(finding -> finding.rule() != rule);
    if (found.size() != 1) {
      throw new AssertionError("expected one finding of " + rule + ": " + found);
    }
    return found.get(0);
  }
}
