package kitstow.tui.edit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.ModuleChoice;
import kitstow.planner.model.Scenario;

/**
 * What is being worked on.
 *
 * @param scenario the scenario
 * @param plan a plan for it
 */
public record Design(Scenario scenario, LoadPlan plan) {
  /** A scenario with all gear at home and every module in the first bay it may have to itself. */
  public static Design unpacked(Scenario scenario) {
    Map<String, String> bays = new LinkedHashMap<>();
    for (ModuleChoice choice : scenario.modules()) {
      for (String bay : choice.bayIds()) {
        if (!bays.containsValue(bay)) {
          bays.put(choice.module().id(), bay);
          break;
        }
      }
    }
    return new Design(scenario, new LoadPlan(scenario.id(), bays, List.of(), LoadPlan.Origin.HAND));
  }

  /** Another plan for the same scenario. */
  public Design with(LoadPlan other) {
    return new Design(scenario, other);
  }
}
