package kitstow.planner;

import java.util.Set;
import java.util.TreeSet;

/** The rules and the audit do not find the same things broken: a fault in the planner itself. */
public final class JudgesDifferException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  JudgesDifferException(Set<String> byRules, Set<String> byAudit) {
    super(
        "the two judges of this plan differ; only the rules found "
            + without(byRules, byAudit)
            + ", only the audit found "
            + without(byAudit, byRules));
  }

  private static Set<String> without(Set<String> all, Set<String> less) {
    Set<String> rest = new TreeSet<>(all);
    rest.removeAll(less);
    return rest;
  }
}
