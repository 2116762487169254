package kitstow.planner.rules;

import java.util.List;
import kitstow.planner.model.RuleId;
import kitstow.planner.packing.Company;

/** Two items that had better not share a space or its air. */
final class PoorCompany implements PlanRule {
  @Override
  public RuleCard card() {
    return Pairs.card(RuleId.POOR_COMPANY, "what had better not ride together");
  }

  @Override
  public List<Breach> breaches(Situation situation) {
    return Pairs.breaches(RuleId.POOR_COMPANY, situation.loading(), Company::softPair);
  }
}
