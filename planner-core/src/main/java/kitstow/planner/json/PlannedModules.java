package kitstow.planner.json;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitstow.planner.model.ModuleChoice;
import kitstow.planner.model.Rig;
import kitstow.planner.model.Scenario;
import kitstow.planner.problem.Code;

/** Reads which bay each module of a plan stands in, and knows the spaces that are there then. */
final class PlannedModules {
  private final Scenario scenario;
  private final Faults faults;
  private Optional<Names> spaces = Optional.empty();

  PlannedModules(Scenario scenario, Faults faults) {
    this.scenario = scenario;
    this.faults = faults;
  }

  /** Bay by module id. */
  Map<String, String> read(Fields fields) {
    Map<String, ModuleChoice> choices = new LinkedHashMap<>();
    Names moduleIds = new Names(faults, "modules of the scenario");
    for (ModuleChoice choice : scenario.modules()) {
      choices.put(choice.module().id(), choice);
      moduleIds.add(choice.module().id());
    }
    Map<String, String> moduleBays = new LinkedHashMap<>();
    Map<String, Place> places = new HashMap<>();
    Map<String, String> taken = new HashMap<>();
    for (Map.Entry<String, Node> member : fields.members().entrySet()) {
      String moduleId = member.getKey();
      Place place = member.getValue().place();
      String bayId = Values.text(member.getValue(), faults);
      moduleBays.put(moduleId, bayId);
      places.put(moduleId, place);
      if (faults.anyIn(place)) {
        continue;
      }
      ModuleChoice choice = choices.get(moduleId);
      if (choice == null) {
        moduleIds.noteUnknown(
            moduleId, place, "is the bay of the module " + Shown.quoted(moduleId));
      } else if (!choice.bayIds().contains(bayId)) {
        notListed(bayId, choice, place);
      } else {
        checkTaken(moduleId, bayId, place, taken);
      }
    }
    checkHosts(moduleBays, places);
    if (fields.present() && !faults.anyIn(fields.place())) {
      Names names = new Names(faults, "spaces that are there under the plan's modules");
      Rig.of(scenario, moduleBays).spaces().keySet().forEach(names::add);
      spaces = Optional.of(names);
    }
    return moduleBays;
  }

  private void notListed(String bayId, ModuleChoice choice, Place place) {
    faults.error(
        Code.BAY_NOT_LISTED,
        place,
        "is " + Shown.quoted(bayId) + ", which is none of the bays the module may stand in",
        "choose one of " + Shown.list(choice.bayIds()) + ", or list the bay in the scenario");
  }

  private void checkTaken(String moduleId, String bayId, Place place, Map<String, String> taken) {
    String other = taken.putIfAbsent(bayId, moduleId);
    if (other != null) {
      faults.error(
          Code.BAY_TAKEN,
          place,
          "is " + Shown.quoted(bayId) + ", where the module " + Shown.quoted(other) + " stands",
          "put one of them into another bay, or leave it out");
    }
  }

  /**
   * Places modules whose bay is there until nothing changes; the bays of the rest are not there.
   */
  private void checkHosts(Map<String, String> moduleBays, Map<String, Place> places) {
    List<String> waiting = new ArrayList<>(moduleBays.keySet());
    List<String> placed = new ArrayList<>();
    boolean changed = true;
    while (changed) {
      changed = false;
      for (String moduleId : new ArrayList<>(waiting)) {
        String bayId = moduleBays.getOrDefault(moduleId, "");
        int slash = bayId.indexOf('/');
        if (slash < 0 || placed.contains(bayId.substring(0, slash))) {
          placed.add(moduleId);
          waiting.remove(moduleId);
          changed = true;
        }
      }
    }
    for (String moduleId : waiting) {
      Place place = places.get(moduleId);
      if (place != null && !faults.anyIn(place)) {
        faults.error(
            Code.NOT_THERE_IN_PLAN,
            place,
            "is "
                + Shown.quoted(moduleBays.getOrDefault(moduleId, ""))
                + ", a bay on a module that is left out or stands in this one",
            "give that module a bay of the ute, tray or canopy");
      }
    }
  }

  /** Notes a space that is not there; says nothing where the modules have faults. */
  void checkSpace(String spaceId, Fields placement) {
    if (spaces.isPresent() && placement.good("space") && !spaces.get().has(spaceId)) {
      placement.error(
          Code.NOT_THERE_IN_PLAN,
          "space",
          "is " + Shown.quoted(spaceId) + ", which is not there under the plan's modules",
          Similar.to(spaceId, spaces.get().all())
              .map(similar -> "did you mean " + similar + "?")
              .orElseGet(() -> "choose from " + Shown.list(spaces.get().all())));
    }
  }
}
