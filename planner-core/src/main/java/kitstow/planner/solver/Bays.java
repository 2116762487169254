package kitstow.planner.solver;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import kitstow.planner.model.BaySpec;
import kitstow.planner.model.ModuleChoice;
import kitstow.planner.model.Scenario;

/**
 * Bays of modules as far as they can be had together.
 *
 * @param fitted bay by module id; a module whose bay is taken, or is on a module that is not
 *     fitted, is not in it
 * @param refused modules that wanted a bay and did not get it
 */
record Bays(Map<String, String> fitted, int refused) {
  /** Gives every module the bay it wants, in the order of the scenario. */
  static Bays settle(Scenario scenario, Map<String, String> wanted) {
    Map<String, String> hostOf = new HashMap<>();
    for (ModuleChoice choice : scenario.modules()) {
      for (BaySpec bay : choice.module().bays()) {
        hostOf.put(choice.module().id() + "/" + bay.id(), choice.module().id());
      }
    }
    Map<String, String> fitted = new LinkedHashMap<>();
    Set<String> taken = new HashSet<>();
    boolean more = true;
    while (more) {
      more = false;
      for (ModuleChoice choice : scenario.modules()) {
        String id = choice.module().id();
        String bay = wanted.get(id);
        String host = bay == null ? null : hostOf.get(bay);
        boolean there = host == null || fitted.containsKey(host);
        if (bay != null && !fitted.containsKey(id) && there && taken.add(bay)) {
          fitted.put(id, bay);
          more = true;
        }
      }
    }
    return new Bays(fitted, wanted.size() - fitted.size());
  }
}
