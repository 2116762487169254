package kitstow.planner.rules;

/** A rule: a limit in every state, or a judgement of the plan as it stands. */
public sealed interface Rule permits LimitRule, PlanRule, StateRule {
  /** What the rule says of itself. */
  RuleCard card();
}
