package kitstow.planner.planted;

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
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Placement;
import kitstow.planner.model.Scenario;
import kitstow.planner.report.CheckReport;
import kitstow.planner.report.Finding;
import kitstow.planner.rules.Situation;

/** A generated scenario with a plan for it, and what the two judges say of it. Invented. */
public record SoundPlan(Scenario scenario, LoadPlan plan) {
  /** The plan carried out. */
  public Loading loading() {
    return Loading.of(scenario, plan);
  }

  List<LoadState> judgedStates() {
    List<LoadState> judged = new ArrayList<>();
    for (LoadState state : Situation.of(loading()).judgedStates()) {
      if (state.kind() != LoadKind.CERTIFICATION) {
        judged.add(state);
      }
    }
    return judged;
  }

  /** Keys of all that the rules find broken. */
  Set<String> brokenByRules() {
    Set<String> keys = new TreeSet<>();
    for (Finding finding : CheckReport.of(Situation.of(loading())).brokenFindings()) {
      keys.add(finding.key());
    }
    return keys;
  }

  /** Keys of all that the audit finds broken. */
  Set<String> brokenByAudit() {
    Set<String> keys = new TreeSet<>();
    for (AuditFinding finding : Audit.of(loading(), judgedStates())) {
      keys.add(finding.rule() + " " + String.join(" ", finding.subjectIds()));
    }
    return keys;
  }

  SoundPlan with(Scenario changed) {
    return new SoundPlan(changed, plan);
  }

  /** The plan with another line for one item. */
  SoundPlan moved(PlacedItem item, Placement to) {
    List<Placement> placements = new ArrayList<>(plan.placements());
    placements.replaceAll(old -> old.equals(item.placement()) ? to : old);
    return new SoundPlan(
        scenario, new LoadPlan(plan.scenarioId(), plan.moduleBays(), placements, plan.origin()));
  }
}
