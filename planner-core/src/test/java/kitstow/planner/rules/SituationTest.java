package kitstow.planner.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Scenario;
import kitstow.planner.scenarios.ShippedFiles;
import kitstow.planner.statics.LoadLine;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SituationTest {
  @ParameterizedTest
  @ValueSource(strings = {"remote-fortnight", "dual-cab-fortnight", "towing-week", "work-day"})
  void linesThatAreKeptAreThoseOfEveryState(String name) {
    Scenario scenario = ShippedFiles.scenario(name);
    LoadPlan plan =
        ShippedFiles.plannedNames().contains(name)
            ? ShippedFiles.plan(name, scenario)
            : new LoadPlan(scenario.id(), Map.of(), List.of(), LoadPlan.Origin.HAND);
    Loading loading = Loading.of(scenario, plan);
    Situation situation = Situation.of(loading);
    int compared = 0;
    for (LoadState state : situation.timeline().states()) {
      for (LimitRule rule : RuleBook.LIMITS) {
        assertThat(told(situation.lines(rule, state), state))
            .as("%s in %s", rule.card().id(), state.id())
            .isEqualTo(told(rule.lines(loading, state), state));
        compared++;
      }
    }
    assertThat(compared).isGreaterThan(100);
  }

  private static List<String> told(List<LoadLine> lines, LoadState state) {
    List<String> told = new ArrayList<>();
    for (LoadLine line : lines) {
      told.add(
          line.rule()
              + " "
              + line.subjectId()
              + " "
              + line.limitG()
              + " "
              + line.denominator()
              + " "
              + line.terms()
              + " "
              + line.constantToleranceG()
              + " "
              + line.scaledLoad(state)
              + " "
              + line.over(state));
    }
    return told;
  }
}
