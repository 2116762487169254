package kitstow.planner.advice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kitstow.planner.model.Bay;
import kitstow.planner.model.FittedModule;
import kitstow.planner.model.Item;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Loading;
import kitstow.planner.model.ModuleChoice;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Placement;
import kitstow.planner.model.Rig;
import kitstow.planner.model.Space;
import kitstow.planner.report.Mend;
import kitstow.planner.report.Mend.What;

/** Single changes of a plan: a unit turned, moved, swapped, left or taken; a module moved. */
final class Changes {
  private static final int MOST_PARTNERS = 20;

  private final Loading loading;
  private final Places places;

  Changes(Loading loading) {
    this.loading = loading;
    this.places = new Places(loading.rig());
  }

  /** A unit in every space that has a place for it, its own among them. */
  List<Change> movesOf(PlacedItem unit) {
    List<Change> changes = new ArrayList<>();
    List<PlacedItem> others = without(unit);
    for (Space space : loading.rig().spaces().values()) {
      places
          .find(unit.item(), unit.unit(), space, others)
          .filter(place -> !place.placement().equals(unit.placement()))
          .ifPresent(
              place -> {
                boolean stays = space.id().equals(unit.space().id());
                changes.add(
                    new Change(
                        List.of(
                            new Mend.Step(
                                stays ? What.TURN : What.MOVE,
                                unit.key(),
                                unit.space().id(),
                                space.id(),
                                kg(unit.item()),
                                /* withKey= */ "",
                                /* withKg= */ 0.0)),
                        put(Map.of(unit.key(), place.placement()))));
              });
    }
    return changes;
  }

  /** Two units, each in the space of the other. */
  Optional<Change> swap(PlacedItem one, PlacedItem other) {
    List<PlacedItem> rest = without(one);
    rest.removeIf(unit -> unit.is(other));
    Optional<PlacedItem> first = places.find(one.item(), one.unit(), other.space(), rest);
    if (!first.isPresent()) {
      return Optional.empty();
    }
    rest.add(first.get());
    return places
        .find(other.item(), other.unit(), one.space(), rest)
        .map(
            second ->
                new Change(
                    List.of(
                        new Mend.Step(
                            What.SWAP,
                            one.key(),
                            one.space().id(),
                            other.space().id(),
                            kg(one.item()),
                            other.key(),
                            kg(other.item()))),
                    put(
                        Map.of(
                            one.key(), first.get().placement(), other.key(), second.placement()))));
  }

  /**
   * A unit swapped with those elsewhere that are about as bulky.
   *
   * @param lighter whether only with lighter ones
   */
  List<Change> swapsOf(PlacedItem unit, boolean lighter) {
    List<Change> found = new ArrayList<>();
    int partners = 0;
    for (PlacedItem other : loading.placed().values()) {
      boolean elsewhere = !other.space().id().equals(unit.space().id());
      boolean admitted = !lighter || other.item().mass().massG() < unit.item().mass().massG();
      if (elsewhere && admitted && alike(unit, other)) {
        swap(unit, other).ifPresent(found::add);
        partners++;
      }
      if (partners >= MOST_PARTNERS) {
        break;
      }
    }
    return found;
  }

  /** Whether one might go where the other is: neither has more than three times the volume. */
  private static boolean alike(PlacedItem one, PlacedItem other) {
    long a = Gaps.volumeMm3(one.box());
    long b = Gaps.volumeMm3(other.box());
    return a <= 3L * b && b <= 3L * a;
  }

  /** A unit left at home. */
  static Change leave(Loading loading, PlacedItem unit) {
    List<Placement> placements = new ArrayList<>(loading.plan().placements());
    placements.remove(unit.placement());
    return new Change(
        List.of(
            new Mend.Step(
                What.LEAVE_HOME,
                unit.key(),
                unit.space().id(),
                /* to= */ "",
                kg(unit.item()),
                /* withKey= */ "",
                /* withKg= */ 0.0)),
        with(loading, loading.plan().moduleBays(), placements));
  }

  /** A unit that is at home, in every space that has a place for it. */
  List<Change> takesOf(Item item, int unit) {
    List<Change> changes = new ArrayList<>();
    for (Space space : loading.rig().spaces().values()) {
      places
          .find(item, unit, space, loading.placed().values())
          .ifPresent(
              place -> {
                List<Placement> placements = new ArrayList<>(loading.plan().placements());
                placements.add(place.placement());
                changes.add(
                    new Change(
                        List.of(
                            new Mend.Step(
                                What.TAKE,
                                item.keyOf(unit),
                                /* from= */ "",
                                space.id(),
                                kg(item),
                                /* withKey= */ "",
                                /* withKg= */ 0.0)),
                        with(loading.plan().moduleBays(), placements)));
              });
    }
    return changes;
  }

  /**
   * A module in every other bay it may stand in and that is free, with what is in it, as long as
   * all else that is aboard keeps its space: the floor a module comes to stand on is none.
   */
  List<Change> movesOf(FittedModule module) {
    List<Change> changes = new ArrayList<>();
    String id = module.module().id();
    for (ModuleChoice choice : loading.scenario().modules()) {
      for (String bay : choice.bayIds()) {
        if (choice.module().id().equals(id) && isFree(bay, id)) {
          Map<String, String> bays = new LinkedHashMap<>(loading.plan().moduleBays());
          bays.put(id, bay);
          if (!keepsSpaces(bays)) {
            continue;
          }
          changes.add(
              new Change(
                  List.of(
                      new Mend.Step(
                          What.MOVE_MODULE,
                          id,
                          module.bay().id(),
                          bay,
                          kg(module),
                          /* withKey= */ "",
                          /* withKg= */ 0.0)),
                  with(bays, loading.plan().placements())));
        }
      }
    }
    return changes;
  }

  private boolean keepsSpaces(Map<String, String> bays) {
    Set<String> there = Rig.of(loading.scenario(), bays).spaces().keySet();
    for (PlacedItem unit : loading.placed().values()) {
      if (!there.contains(unit.space().id())) {
        return false;
      }
    }
    return true;
  }

  /** Whether a bay is there, not taken and not on the module itself. */
  private boolean isFree(String bayId, String moduleId) {
    Bay bay = loading.rig().bays().get(bayId);
    return bay != null
        && !loading.plan().moduleBays().containsValue(bayId)
        && !loading.rig().standsOn(bay, moduleId);
  }

  private List<PlacedItem> without(PlacedItem unit) {
    List<PlacedItem> others = new ArrayList<>(loading.placed().values());
    others.removeIf(unit::is);
    return others;
  }

  private LoadPlan put(Map<String, Placement> places) {
    List<Placement> placements = new ArrayList<>();
    for (PlacedItem unit : loading.placed().values()) {
      placements.add(places.getOrDefault(unit.key(), unit.placement()));
    }
    return with(loading.plan().moduleBays(), placements);
  }

  private LoadPlan with(Map<String, String> bays, List<Placement> placements) {
    return with(loading, bays, placements);
  }

  private static LoadPlan with(
      Loading loading, Map<String, String> bays, List<Placement> placements) {
    return new LoadPlan(loading.plan().scenarioId(), bays, placements, loading.plan().origin());
  }

  private static double kg(Item item) {
    return item.mass().massG() / 1000.0;
  }

  private static double kg(FittedModule module) {
    return (module.module().fixed().massG() + module.module().moving().massG()) / 1000.0;
  }
}
