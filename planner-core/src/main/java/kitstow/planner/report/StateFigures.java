package kitstow.planner.report;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import kitstow.planner.model.LoadKind;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.RuleId;
import kitstow.planner.rules.LimitRule;
import kitstow.planner.rules.RuleBook;
import kitstow.planner.rules.Situation;
import kitstow.planner.rules.StateCheck;
import kitstow.planner.rules.StateRule;
import kitstow.planner.statics.AxleLoads;
import kitstow.planner.statics.CentreOfMass;
import kitstow.planner.statics.LoadLine;
import kitstow.planner.statics.Margin;
import kitstow.planner.statics.OverhangMoment;
import kitstow.planner.statics.SideLoads;

/**
 * All figures of one state.
 *
 * @param state state
 * @param axles axle loads
 * @param gcmKg load against GCM, when a trailer is on
 * @param moment rear overhang moment
 * @param centre centre of mass
 * @param sides loads of the two sides
 * @param limits readings of all limits that apply
 * @param checks figures of good practice
 */
public record StateFigures(
    LoadState state,
    AxleLoads axles,
    OptionalDouble gcmKg,
    OverhangMoment moment,
    CentreOfMass centre,
    SideLoads sides,
    List<LimitReading> limits,
    List<StateCheck> checks) {
  /** Copies its collections. */
  public StateFigures {
    limits = List.copyOf(limits);
    checks = List.copyOf(checks);
  }

  /** Figures of a state; a state that is a note has no limits. */
  public static StateFigures of(Situation situation, LoadState state) {
    Loading loading = situation.loading();
    List<LimitReading> readings = new ArrayList<>();
    List<StateCheck> checks = new ArrayList<>();
    if (!state.noteOnly()) {
      for (LimitRule rule : RuleBook.LIMITS) {
        for (LoadLine line : situation.lines(rule, state)) {
          readings.add(
              new LimitReading(
                  line.rule(), line.subjectId(), state, Margin.of(loading, state, line)));
        }
      }
      for (StateRule rule : RuleBook.STATE_RULES) {
        checks.addAll(rule.checks(situation, state));
      }
    }
    return new StateFigures(
        state,
        AxleLoads.of(loading, state),
        gcmOf(readings),
        OverhangMoment.of(loading, state),
        CentreOfMass.of(loading, state),
        SideLoads.of(loading, state),
        readings,
        checks);
  }

  private static OptionalDouble gcmOf(List<LimitReading> readings) {
    for (LimitReading reading : readings) {
      if (reading.rule() == RuleId.GCM_LIMIT) {
        return OptionalDouble.of(reading.margin().loadKg());
      }
    }
    return OptionalDouble.empty();
  }

  /** Whether the ute moves in this state. */
  public boolean moving() {
    return state.kind() == LoadKind.MOVING;
  }
}
