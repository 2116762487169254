package kitstow.planner.json;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kitstow.planner.model.BaySpec;
import kitstow.planner.model.ModuleChoice;
import kitstow.planner.model.Rig;
import kitstow.planner.model.Scenario;
import kitstow.planner.problem.Code;

/**
 * Reads which bay each module of a plan stands in, and knows the spaces that are there then. Where
 * the bays have faults it knows the spaces that some choice of bays would give.
 */
final class PlannedModules {
  private final Optional<Scenario> scenario;
  private final Faults faults;
  private final Set<String> unknownModules = new HashSet<>();
  private Optional<Names> spaces = Optional.empty();
  private boolean bayFaults;

  PlannedModules(Optional<Scenario> scenario, Faults faults) {
    this.scenario = scenario;
    this.faults = faults;
  }

  /** Bay by module id. */
  Map<String, String> read(Fields fields) {
    Map<String, ModuleChoice> choices = new LinkedHashMap<>();
    Names moduleIds = new Names(faults, "modules of the scenario");
    for (ModuleChoice choice : scenario.map(Scenario::modules).orElse(List.of())) {
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
      if (!scenario.isPresent()) {
        checkTaken(moduleId, bayId, place, taken);
      } else if (choice == null) {
        unknownModules.add(moduleId);
        moduleIds.noteUnknown(
            moduleId, place, "is the bay of the module " + Shown.quoted(moduleId));
      } else if (!choice.bayIds().contains(bayId)) {
        notListed(bayId, choice, place);
      } else {
        checkTaken(moduleId, bayId, place, taken);
      }
    }
    checkHosts(moduleBays, places);
    bayFaults = !fields.present() || faults.anyIn(fields.place());
    spaces = scenario.map(known -> bayFaults ? possible(known) : there(known, moduleBays));
    return moduleBays;
  }

  private Names there(Scenario known, Map<String, String> moduleBays) {
    Names names = new Names(faults, "spaces that are there under the plan's modules");
    Rig.of(known, moduleBays).spaces().keySet().forEach(names::add);
    return names;
  }

  /** What can be there: bays left empty, what is there without modules, and each of them fitted. */
  private Names possible(Scenario known) {
    Names names = new Names(faults, "spaces that the modules can give in any of their bays");
    Rig.of(known, Map.of()).possibleSpaceIds().forEach(names::add);
    for (ModuleChoice choice : known.modules()) {
      String id = choice.module().id();
      choice.module().spaces().forEach(space -> names.add(id + "/" + space.id()));
      for (BaySpec bay : choice.module().bays()) {
        if (bay.spaceWhenEmpty()) {
          names.add(id + "/" + bay.id());
        }
      }
    }
    return names;
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

  /**
   * Notes a space that is not there; where the bays have faults, one that cannot be there. A space
   * of a module that was noted as unknown is not noted again.
   */
  void checkSpace(String spaceId, Fields placement) {
    if (bayFaults && spaces.isPresent()) {
      int slash = spaceId.indexOf('/');
      boolean ofUnknown = slash > 0 && unknownModules.contains(spaceId.substring(0, slash));
      if (placement.good("space") && !ofUnknown) {
        spaces.get().check(spaceId, placement.place("space"));
      }
    } else if (spaces.isPresent() && placement.good("space") && !spaces.get().has(spaceId)) {
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
