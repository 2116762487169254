package kitstow.planner.report;

import static kitstow.planner.testkit.ItemBuilder.anItem;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import kitstow.planner.LoadPlanner;
import kitstow.planner.model.Reach;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.RuleOverride;
import kitstow.planner.testkit.RigBuilder;
import kitstow.planner.testkit.Rigs;
import org.junit.jupiter.api.Test;

class OverriddenTest {
  private static final String REASON = "the straps ride in the cab as well";

  @Test
  void aRuleThatIsNotKeptForAReasonBreaksNothingAndTellsTheReason() {
    CheckReport report = checked(new RuleOverride(RuleId.EMERGENCY_REACH, List.of(), REASON));
    assertThat(report.broken()).isFalse();
    assertThat(report.brokenRules()).isZero();
    Finding finding = report.overriddenFindings().get(0);
    assertThat(finding.rule()).isEqualTo(RuleId.EMERGENCY_REACH);
    assertThat(finding.override()).isEqualTo(REASON);
  }

  @Test
  void itHoldsOnlyForWhatItNames() {
    assertThat(
            checked(new RuleOverride(RuleId.EMERGENCY_REACH, List.of("straps"), REASON)).broken())
        .isFalse();
    assertThat(checked(new RuleOverride(RuleId.EMERGENCY_REACH, List.of("bag"), REASON)).broken())
        .isTrue();
    assertThat(checked(new RuleOverride(RuleId.GAS_OUTSIDE, List.of(), REASON)).broken()).isTrue();
  }

  @Test
  void anItemStandsForAllItsUnitsAndEverythingNamedMustBeConcerned() {
    RuleOverride pair = new RuleOverride(RuleId.FORBIDDEN_PAIR, List.of("can", "bread"), REASON);
    assertThat(pair.covers(RuleId.FORBIDDEN_PAIR, List.of("bread", "can#2"))).isTrue();
    assertThat(pair.covers(RuleId.FORBIDDEN_PAIR, List.of("can#1", "can#2"))).isFalse();
    assertThat(pair.covers(RuleId.FORBIDDEN_PAIR, List.of("bread", "canvas"))).isFalse();
    assertThat(pair.covers(RuleId.POOR_COMPANY, List.of("bread", "can#2"))).isFalse();
  }

  private static CheckReport checked(RuleOverride override) {
    RigBuilder rig =
        RigBuilder.aDualCab()
            .items(
                anItem("straps").size(300, 300, 100).reach(Reach.EMERGENCY),
                anItem("bag").size(300, 300, 100))
            .put("straps", Rigs.BOX, 0, 0, 0)
            .put("bag", Rigs.BOX, 0, 0, 100);
    return LoadPlanner.check(rig.scenario().withOverrides(List.of(override)), rig.plan());
  }
}
