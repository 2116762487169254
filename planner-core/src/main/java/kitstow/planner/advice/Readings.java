package kitstow.planner.advice;

import java.util.LinkedHashMap;
import java.util.Map;
import kitstow.planner.model.LoadKind;
import kitstow.planner.model.LoadState;
import kitstow.planner.report.LimitReading;
import kitstow.planner.rules.LimitRule;
import kitstow.planner.rules.RuleBook;
import kitstow.planner.rules.Situation;
import kitstow.planner.statics.LoadLine;
import kitstow.planner.statics.Margin;

/** Every limit in every state that decides something, by limit and state. */
final class Readings {
  private Readings() {}

  static Map<String, LimitReading> of(Situation situation) {
    Map<String, LimitReading> readings = new LinkedHashMap<>();
    for (LoadState state : situation.judgedStates()) {
      if (state.kind() == LoadKind.CERTIFICATION) {
        continue;
      }
      for (LimitRule rule : RuleBook.LIMITS) {
        for (LoadLine line : situation.lines(rule, state)) {
          LimitReading reading =
              new LimitReading(
                  line.rule(),
                  line.subjectId(),
                  state,
                  Margin.of(situation.loading(), state, line));
          readings.put(reading.key() + " " + state.id(), reading);
        }
      }
    }
    return readings;
  }

  /** Load on a limit in a state; nothing where the limit has nothing to carry. */
  static double loadKg(Map<String, LimitReading> readings, String key) {
    LimitReading reading = readings.get(key);
    return reading == null ? 0.0 : reading.margin().loadKg();
  }
}
