package kitstow.planner.rules;

import java.util.List;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.RuleId;

/** How high ute, load and trailer may be on a leg: a ferry, a garage. */
final class OverallHeight implements StateRule {
  @Override
  public RuleCard card() {
    return new RuleCard(
        RuleId.OVERALL_HEIGHT,
        "ute, load and trailer are no higher than a leg allows: ferry, garage",
        "the scenario's own figure",
        SourceStatus.BY_DEFINITION,
        "mostHeightMm of a leg, none",
        /* overridable= */ true);
  }

  @Override
  public List<StateCheck> checks(Situation situation, LoadState state) {
    return LegRoom.checks(
        RuleId.OVERALL_HEIGHT, situation, state, room -> room.heightMm(), size -> size.heightMm());
  }
}
