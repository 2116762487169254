package kitstow.planner.rules;

import java.util.List;

/** A rule that judges a plan once, with everything closed. */
public non-sealed interface PlanRule extends Rule {
  /** Where the plan breaks the rule. */
  List<Breach> breaches(Situation situation);
}
