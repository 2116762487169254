package kitstow.planner.rules;

import java.util.List;
import java.util.Set;
import kitstow.planner.model.Reach;
import kitstow.planner.model.RuleId;

/** Things to move before daily gear comes out. */
final class MovesToReach implements PlanRule {
  @Override
  public RuleCard card() {
    return RuleCard.practice(
        RuleId.MOVES_TO_REACH,
        "things to move before daily gear comes out",
        "",
        /* overridable= */ true);
  }

  @Override
  public List<Breach> breaches(Situation situation) {
    return Buried.breaches(
        RuleId.MOVES_TO_REACH, Set.of(Reach.MANY_A_DAY, Reach.DAILY), situation.loading());
  }
}
