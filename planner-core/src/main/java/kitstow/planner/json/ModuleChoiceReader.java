package kitstow.planner.json;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kitstow.planner.model.BaySpec;
import kitstow.planner.model.FitOutModule;
import kitstow.planner.model.ModuleChoice;
import kitstow.planner.model.Need;
import kitstow.planner.model.SpaceSpec;
import kitstow.planner.model.Tank;
import kitstow.planner.problem.Code;

/** Reads the modules of a scenario and holds the bays they name against those there are. */
final class ModuleChoiceReader {
  private record Choice(Fields fields, String id, List<String> bayIds) {}

  private final Faults faults;
  private final Known known;
  private final List<Choice> choices = new ArrayList<>();
  private final List<ModuleChoice> modules = new ArrayList<>();

  ModuleChoiceReader(Fields scenario, Faults faults, Shelves shelves, Known known) {
    this.faults = faults;
    this.known = known;
    Set<String> hostBays = new HashSet<>(known.bays.all());
    for (Fields fields : scenario.objectsIfGiven("modules")) {
      read(fields, shelves);
    }
    if (!scenario.idsKnown("modules")) {
      known.regionsIncomplete();
      known.tanks.incomplete();
    }
    for (Choice choice : choices) {
      checkBays(choice);
    }
    checkCircles(hostBays);
  }

  private void read(Fields fields, Shelves shelves) {
    String id = fields.id("id");
    known.keys.claim(id, fields.place("id"));
    Optional<FitOutModule> entry = shelves.modules().named(fields);
    List<String> bayIds = fields.names("bays", /* least= */ 1, "name the bays it may stand in");
    Need need = fields.word("need", Words.NEED);
    int value = ChoiceFields.value(fields, need);
    Optional<String> title = fields.textIfGiven("title");
    fields.doneBesideEntry("modules");
    choices.add(new Choice(fields, id, bayIds));
    if (!shelves.modules().idsKnown(fields, "bays", "spaces")) {
      known.regionsIncomplete();
    }
    if (!shelves.modules().idsKnown(fields, "tanks")) {
      known.tanks.incomplete();
    }
    if (!entry.isPresent()) {
      return;
    }
    FitOutModule module = named(entry.get(), id, title);
    makeKnown(module, fields);
    modules.add(new ModuleChoice(module, bayIds, need, value));
  }

  private static FitOutModule named(FitOutModule entry, String id, Optional<String> title) {
    List<Tank> tanks = new ArrayList<>();
    for (Tank tank : entry.tanks()) {
      tanks.add(
          new Tank(
              id + "/" + tank.id(),
              tank.title(),
              tank.kind(),
              tank.capacityMl(),
              tank.densityGPerL(),
              tank.empty(),
              tank.box(),
              tank.startMl()));
    }
    return withTanks(entry, id, title.orElse(entry.title()), tanks);
  }

  private static FitOutModule withTanks(
      FitOutModule module, String id, String title, List<Tank> tanks) {
    return new FitOutModule(
        id,
        title,
        module.entryId(),
        module.source(),
        module.size(),
        module.fixed(),
        module.moving(),
        module.slide(),
        module.rating(),
        module.spaces(),
        module.bays(),
        tanks);
  }

  private void makeKnown(FitOutModule module, Fields fields) {
    if (module.moving().massG() > 0L) {
      known.keys.claimMoving(module.id(), fields.place("id"));
    }
    for (BaySpec bay : module.bays()) {
      String id = module.id() + "/" + bay.id();
      known.bays.add(id);
      if (bay.spaceWhenEmpty()) {
        known.spaces.add(id);
      }
    }
    for (SpaceSpec space : module.spaces()) {
      known.spaces.add(module.id() + "/" + space.id());
    }
    Set<String> claimed = new HashSet<>();
    for (Tank tank : module.tanks()) {
      if (claimed.add(tank.id())) {
        known.keys.claimOf("tank", tank.id(), fields.place("entry"));
        known.keys.claimLiquid(tank.id(), fields.place("entry"));
      }
      known.tanks.add(tank.id());
      known.tankById.put(tank.id(), tank);
    }
  }

  private void checkBays(Choice choice) {
    for (Node.TextNode bay : choice.fields().again().texts("bays")) {
      known.bays.check(bay.text(), bay.place());
      if (bay.text().startsWith(choice.id() + "/")) {
        faults.error(
            Code.CIRCULAR_MODULES,
            bay.place(),
            "is " + Shown.quoted(bay.text()) + ", a bay on the module itself",
            "name a bay of the ute, tray, canopy or another module");
      }
    }
  }

  /**
   * Places modules in bays whose hosts are placed until nothing changes; the rest go in circles.
   */
  private void checkCircles(Set<String> hostBays) {
    Set<String> placed = new HashSet<>();
    boolean changed = true;
    while (changed) {
      changed = false;
      for (Choice choice : choices) {
        if (!placed.contains(choice.id()) && canStand(choice, hostBays, placed)) {
          changed = placed.add(choice.id());
        }
      }
    }
    for (Choice choice : choices) {
      Place bays = choice.fields().place("bays");
      if (!placed.contains(choice.id()) && choice.fields().good("bays")) {
        faults.error(
            Code.CIRCULAR_MODULES,
            bays,
            "name only bays of modules that fit only into each other",
            "give one of them a bay of the ute, tray or canopy");
      }
    }
  }

  private boolean canStand(Choice choice, Set<String> hostBays, Set<String> placed) {
    for (String bayId : choice.bayIds()) {
      int slash = bayId.indexOf('/');
      boolean unknown = !known.bays.has(bayId);
      if (unknown || hostBays.contains(bayId)) {
        return true;
      }
      if (slash > 0 && placed.contains(bayId.substring(0, slash))) {
        return true;
      }
    }
    return choice.bayIds().isEmpty();
  }

  /** The modules with what their tanks start with. */
  List<ModuleChoice> modules(Map<String, Long> startMl) {
    List<ModuleChoice> started = new ArrayList<>();
    for (ModuleChoice choice : modules) {
      FitOutModule module = choice.module();
      started.add(
          new ModuleChoice(
              withTanks(
                  module, module.id(), module.title(), TankStarts.apply(module.tanks(), startMl)),
              choice.bayIds(),
              choice.need(),
              choice.value()));
    }
    return started;
  }
}
