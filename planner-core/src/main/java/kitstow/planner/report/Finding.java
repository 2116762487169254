package kitstow.planner.report;

import java.util.List;
import kitstow.planner.model.RuleId;
import kitstow.planner.rules.SourceStatus;

/**
 * Something a person should know or mend.
 *
 * @param rule rule
 * @param severity how grave it is
 * @param stateId state in which it is worst, or "" if it holds always
 * @param subjectIds what it is about
 * @param value figure found
 * @param limit figure allowed
 * @param unit unit of both
 * @param source where the rule comes from
 * @param status how well that source is known
 * @param message one sentence for people
 * @param mend what would put it right
 * @param override why the rule is not kept here, or "" where it is to be kept
 */
public record Finding(
    RuleId rule,
    Severity severity,
    String stateId,
    List<String> subjectIds,
    double value,
    double limit,
    String unit,
    String source,
    SourceStatus status,
    String message,
    String mend,
    String override) {
  /** How grave a finding is. */
  public enum Severity {
    /** A rule is broken. */
    BROKEN,
    /** Within by the figures, but by less than their tolerance. */
    DOUBTFUL,
    /** A rule that is not kept, for a written reason; it breaks nothing. */
    OVERRIDDEN,
    /** Worth knowing. */
    NOTE
  }

  /** Copies its collections. */
  public Finding {
    subjectIds = List.copyOf(subjectIds);
  }

  /** Rule and subjects: what two judges must agree on. */
  public String key() {
    return rule + " " + String.join(" ", subjectIds);
  }
}
