package kitstow.planner.audit;

import java.util.List;
import kitstow.planner.model.RuleId;

/**
 * A rule that a plan breaks.
 *
 * @param rule the rule
 * @param subjectIds what breaks it, in the order the rule names its subjects
 * @param stateId the state in which it is broken most; empty for rules that are judged once
 * @param value what was found: grams, millimetres, things to move; 1 where there is no measure
 * @param limit what it may be; 0 where there is no measure
 * @param unit unit of both; empty where there is no measure
 */
public record AuditFinding(
    RuleId rule, List<String> subjectIds, String stateId, double value, double limit, String unit) {
  /** Copies its collections. */
  public AuditFinding {
    subjectIds = List.copyOf(subjectIds);
  }
}
