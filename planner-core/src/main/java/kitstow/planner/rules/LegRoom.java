package kitstow.planner.rules;

import java.util.List;
import java.util.OptionalInt;
import java.util.function.Function;
import kitstow.planner.model.Leg;
import kitstow.planner.model.LoadKind;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.RuleId;
import kitstow.planner.statics.OverallSize;

/** Holds the overall size in a state against what its leg has room for. */
final class LegRoom {
  private LegRoom() {}

  /** One check where the leg has such a limit and the size is known, else none. */
  static List<StateCheck> checks(
      RuleId rule,
      Situation situation,
      LoadState state,
      Function<Leg.Room, OptionalInt> limit,
      Function<OverallSize, OptionalInt> size) {
    OptionalInt limitMm = OptionalInt.empty();
    if (state.kind() == LoadKind.MOVING && state.legId().isPresent()) {
      for (Leg leg : situation.loading().scenario().trip().legs()) {
        if (leg.id().equals(state.legId().get())) {
          limitMm = limit.apply(leg.room());
        }
      }
    }
    if (!limitMm.isPresent()) {
      return List.of();
    }
    OptionalInt foundMm = size.apply(OverallSize.of(situation.loading(), state));
    if (!foundMm.isPresent()) {
      return List.of();
    }
    int most = limitMm.getAsInt();
    int is = foundMm.getAsInt();
    return List.of(new StateCheck(rule, "ute", "mm", is, most, most - is));
  }
}
