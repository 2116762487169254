package kitstow.planner.rules;

import java.util.List;
import kitstow.planner.model.RuleId;
import kitstow.planner.packing.Company;

/** Two items that may never share a space or its air. */
final class ForbiddenPair implements PlanRule {
  @Override
  public RuleCard card() {
    return Pairs.card(RuleId.FORBIDDEN_PAIR, "what may never ride together");
  }

  @Override
  public List<Breach> breaches(Situation situation) {
    return Pairs.breaches(RuleId.FORBIDDEN_PAIR, situation.loading(), Company::hardPair);
  }
}
