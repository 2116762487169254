package kitstow.planner;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import kitstow.planner.audit.Audit;
import kitstow.planner.audit.AuditFinding;
import kitstow.planner.model.LoadKind;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Scenario;
import kitstow.planner.report.CheckReport;
import kitstow.planner.report.Finding;
import kitstow.planner.rules.Situation;

/**
 * The door to the planner for screens, the command line and apps: judge a plan. Thread-safe; no
 * files, no clock, no reflection on its records.
 */
public final class LoadPlanner {
  private LoadPlanner() {}

  /**
   * Judges a plan by the rules and, independently, by the audit.
   *
   * @throws IllegalArgumentException if the plan names things the scenario does not have
   * @throws JudgesDifferException if the two judges do not find the same: a fault of ours, not of
   *     the plan
   */
  public static CheckReport check(Scenario scenario, LoadPlan plan) {
    Loading loading = Loading.of(scenario, plan);
    Situation situation = Situation.of(loading);
    CheckReport report = CheckReport.of(situation);
    List<LoadState> judged = new ArrayList<>();
    for (LoadState state : situation.judgedStates()) {
      if (state.kind() != LoadKind.CERTIFICATION) {
        judged.add(state);
      }
    }
    Set<String> byRules = new TreeSet<>();
    for (Finding finding : report.brokenFindings()) {
      byRules.add(finding.key());
    }
    Set<String> byAudit = new TreeSet<>();
    for (AuditFinding finding : Audit.of(loading, judged)) {
      byAudit.add(finding.rule() + " " + String.join(" ", finding.subjectIds()));
    }
    if (!byRules.equals(byAudit)) {
      throw new JudgesDifferException(byRules, byAudit);
    }
    return report;
  }
}
