package kitstow.planner;

import java.util.Set;
import java.util.TreeSet;

/** The search has made a plan that breaks a rule it should have kept: a fault in the planner. */
public final class UnsoundPlanException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  UnsoundPlanException(Set<String> broken) {
    super("the plan found breaks rules it should have kept: " + new TreeSet<>(broken));
  }
}
