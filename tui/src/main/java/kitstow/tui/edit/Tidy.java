package kitstow.tui.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import kitstow.planner.json.ScenarioReader;
import kitstow.planner.json.ScenarioWriter;
import kitstow.planner.model.Catalogue;
import kitstow.planner.model.Item;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Loading;
import kitstow.planner.model.ModuleChoice;
import kitstow.planner.model.Placement;
import kitstow.planner.model.Rig;
import kitstow.planner.model.Scenario;

/** Keeps a plan to what its scenario has, and tells what makes a scenario unfit to be read. */
public final class Tidy {
  private Tidy() {}

  /**
   * The design without what the scenario no longer has room for: modules whose bay is gone or taken
   * are left out, gear whose unit or space is gone is at home.
   */
  public static Design plan(Scenario scenario, LoadPlan plan) {
    Map<String, String> bays = bays(scenario, plan.moduleBays());
    Set<String> spaces = Rig.of(scenario, bays).spaces().keySet();
    Map<String, Item> items = new LinkedHashMap<>();
    scenario.items().forEach(item -> items.put(item.id(), item));
    List<Placement> kept = new ArrayList<>();
    for (Placement placement : plan.placements()) {
      Optional<Item> item = Optional.ofNullable(items.get(placement.itemId()));
      boolean there =
          item.filter(of -> placement.unit() <= of.quantity())
              .filter(of -> placement.shape() < of.shapes().size())
              .isPresent();
      if (there && spaces.contains(placement.spaceId())) {
        kept.add(placement);
      }
    }
    return new Design(scenario, new LoadPlan(plan.scenarioId(), bays, kept, LoadPlan.Origin.HAND));
  }

  /**
   * The same with modules elsewhere; gear stays where it stands if there is still a space around
   * it, whatever that is called now, and no module upon it.
   *
   * @param planned bays by module
   */
  public static Design plan(Design before, Scenario scenario, Map<String, String> planned) {
    Loading loading = Loading.of(before.scenario(), before.plan());
    Rig rig = Rig.of(scenario, bays(scenario, planned));
    InPlace inPlace = new InPlace(loading, rig);
    String id = before.plan().scenarioId();
    return plan(
        scenario.withItems(inPlace.pinned(scenario.items())),
        new LoadPlan(id, planned, inPlace.lines(), LoadPlan.Origin.HAND));
  }

  /** Bays by module, without those that are not there or taken. */
  private static Map<String, String> bays(Scenario scenario, Map<String, String> planned) {
    Map<String, String> bays = new LinkedHashMap<>();
    Set<String> taken = new TreeSet<>();
    Set<String> there = new TreeSet<>(Rig.of(scenario, Map.of()).bays().keySet());
    boolean changed = true;
    while (changed) {
      changed = false;
      for (ModuleChoice choice : scenario.modules()) {
        String id = choice.module().id();
        String bay = planned.getOrDefault(id, "");
        boolean fits = choice.bayIds().contains(bay) && there.contains(bay);
        if (!bays.containsKey(id) && fits && taken.add(bay)) {
          bays.put(id, bay);
          choice.module().bays().forEach(spec -> there.add(id + "/" + spec.id()));
          changed = true;
        }
      }
    }
    return bays;
  }

  /** What a reader of scenarios would say of it; nothing where it can be saved and read again. */
  public static List<String> faults(Scenario scenario) {
    List<String> faults = new ArrayList<>();
    ScenarioReader.read(ScenarioWriter.write(scenario), Catalogue.EMPTY)
        .match(
            read -> 0,
            refused -> {
              refused
                  .report()
                  .problems()
                  .forEach(
                      problem ->
                          faults.add(
                              problem.jsonPath()
                                  + " "
                                  + problem.message()
                                  + ". Hint: "
                                  + problem.hint()));
              return 0;
            });
    return faults;
  }
}
