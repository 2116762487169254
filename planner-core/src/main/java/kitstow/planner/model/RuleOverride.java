package kitstow.planner.model;

import java.util.List;

/**
 * A rule that somebody has decided not to keep, with a written reason.
 *
 * @param rule a rule that may be overridden
 * @param subjectIds what it is not kept for: item ids, {@code item#unit} keys, space ids; none
 *     means wherever it is broken
 * @param reason why; it is shown wherever the rule is
 */
public record RuleOverride(RuleId rule, List<String> subjectIds, String reason) {
  /** Copies its collections. */
  public RuleOverride {
    subjectIds = List.copyOf(subjectIds);
  }

  /** Whether it holds for a rule that is broken by these subjects: all that it names are there. */
  public boolean covers(RuleId broken, List<String> subjects) {
    if (broken != rule) {
      return false;
    }
    for (String named : subjectIds) {
      boolean there = false;
      for (String subject : subjects) {
        there |= subject.equals(named) || subject.startsWith(named + "#");
      }
      if (!there) {
        return false;
      }
    }
    return true;
  }
}
