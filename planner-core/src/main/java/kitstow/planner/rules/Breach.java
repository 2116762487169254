package kitstow.planner.rules;

import java.util.List;
import kitstow.planner.model.RuleId;

/**
 * Where and by how much a plan breaks a rule.
 *
 * @param rule rule
 * @param subjectIds what breaks it, in the order the rule names
 * @param stateId state in which it is worst, or "" if judged once
 * @param value figure found
 * @param limit figure allowed
 * @param unit unit of both
 * @param what one sentence for people
 * @param mend what would put it right
 */
public record Breach(
    RuleId rule,
    List<String> subjectIds,
    String stateId,
    double value,
    double limit,
    String unit,
    String what,
    String mend) {
  /** Copies its collections. */
  public Breach {
    subjectIds = List.copyOf(subjectIds);
  }

  /** Rule and subjects: what two judges must agree on. */
  public String key() {
    return rule + " " + String.join(" ", subjectIds);
  }
}
