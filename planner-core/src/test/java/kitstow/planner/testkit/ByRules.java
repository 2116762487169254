package kitstow.planner.testkit;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.rules.Breach;
import kitstow.planner.rules.LimitRule;
import kitstow.planner.rules.PlanRule;
import kitstow.planner.rules.RuleBook;
import kitstow.planner.rules.Situation;
import kitstow.planner.statics.LoadLine;
import kitstow.planner.trip.Timeline;

/** What the rules find broken in given states, told as lines such as {@code BEARING lower}. */
public final class ByRules {
  private ByRules() {}

  /** Keys of all binding rules that are broken. */
  public static Set<String> broken(Loading loading, List<LoadState> states) {
    Set<String> keys = new TreeSet<>();
    for (LoadState state : states) {
      for (LimitRule rule : RuleBook.LIMITS) {
        for (LoadLine line : state.noteOnly() ? List.<LoadLine>of() : rule.lines(loading, state)) {
          if (line.over(state)) {
            keys.add(line.rule() + " " + line.subjectId());
          }
        }
      }
    }
    Situation situation =
        Situation.of(loading, new Timeline(states, List.of(), List.of(), List.of()));
    for (PlanRule rule : RuleBook.PLAN_RULES) {
      for (Breach breach : rule.breaches(situation)) {
        if (breach.rule().binding()) {
          keys.add(breach.key());
        }
      }
    }
    return keys;
  }
}
