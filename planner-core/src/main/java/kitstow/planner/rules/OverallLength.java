package kitstow.planner.rules;

import java.util.List;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.RuleId;

/** How long ute, load and trailer may be on a leg: a ferry, a garage. */
final class OverallLength implements StateRule {
  @Override
  public RuleCard card() {
    return new RuleCard(
        RuleId.OVERALL_LENGTH,
        "ute, load and trailer are no longer than a leg allows: ferry, garage",
        "the scenario's own figure",
        SourceStatus.BY_DEFINITION,
        "mostLengthMm of a leg, none",
        /* overridable= */ true);
  }

  @Override
  public List<StateCheck> checks(Situation situation, LoadState state) {
    return LegRoom.checks(
        RuleId.OVERALL_LENGTH, situation, state, room -> room.lengthMm(), size -> size.lengthMm());
  }
}
