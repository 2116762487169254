package kitstow.planner.report;

import kitstow.planner.model.LoadKind;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.RuleId;
import kitstow.planner.statics.Margin;

/**
 * One limit in one state.
 *
 * @param rule rule
 * @param subjectId what is limited
 * @param state state
 * @param margin load, limit, margin and bands
 */
public record LimitReading(RuleId rule, String subjectId, LoadState state, Margin margin) {
  /** Rule and subject: one row of a table over all states. */
  public String key() {
    return rule + " " + subjectId;
  }

  /** Whether this reading belongs to the certification case, which is reported apart. */
  public boolean certification() {
    return state.kind() == LoadKind.CERTIFICATION;
  }
}
