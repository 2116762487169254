package kitstow.planner.advice;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.report.Mend;

/**
 * A plan after some changes.
 *
 * @param steps the changes
 * @param plan the plan with them
 */
record Change(List<Mend.Step> steps, LoadPlan plan) {
  Change {
    steps = List.copyOf(steps);
  }

  /** This change made after others. */
  Change after(Change earlier) {
    List<Mend.Step> all = new ArrayList<>(earlier.steps);
    all.addAll(steps);
    return new Change(all, plan);
  }

  Mend.Step last() {
    return steps.get(steps.size() - 1);
  }
}
