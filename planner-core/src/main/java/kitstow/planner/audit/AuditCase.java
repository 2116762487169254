package kitstow.planner.audit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import kitstow.planner.model.Body;
import kitstow.planner.model.Facing;
import kitstow.planner.model.FittedDoor;
import kitstow.planner.model.FittedModule;
import kitstow.planner.model.LoadKind;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Ratings;
import kitstow.planner.model.Rig;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.Space;
import kitstow.planner.model.Surface;

/**
 * What one audit looks at: the loading, the states that are judged, and every item and module with
 * the box the audit itself gives it.
 *
 * @param loading the loading
 * @param states states that are judged, in the order of the trip
 * @param items placed units
 * @param itemsBySpace the same by space id; spaces that hold nothing are left out
 * @param modules fitted modules
 */
record AuditCase(
    Loading loading,
    List<LoadState> states,
    List<AuditedItem> items,
    Map<String, List<AuditedItem>> itemsBySpace,
    List<AuditedModule> modules) {

  static AuditCase of(Loading loading, List<LoadState> given) {
    List<LoadState> states = new ArrayList<>();
    for (LoadState state : given) {
      if (state.size() != loading.bodies().size()) {
        throw new IllegalArgumentException(
            "state "
                + state.id()
                + " has "
                + state.size()
                + " bodies, the loading has "
                + loading.bodies().size());
      }
      if (!state.noteOnly()) {
        states.add(state);
      }
    }
    List<AuditedItem> items = new ArrayList<>();
    Map<String, List<AuditedItem>> bySpace = new LinkedHashMap<>();
    for (PlacedItem placed : loading.placed().values()) {
      AuditedItem item = AuditedItem.of(placed, loading.indexOf(placed.key()));
      items.add(item);
      bySpace.computeIfAbsent(placed.space().id(), id -> new ArrayList<>()).add(item);
    }
    List<AuditedModule> modules = new ArrayList<>();
    for (FittedModule fitted : loading.rig().modules().values()) {
      modules.add(AuditedModule.of(fitted));
    }
    return new AuditCase(loading, states, items, bySpace, modules);
  }

  Scenario scenario() {
    return loading.scenario();
  }

  Rig rig() {
    return loading.rig();
  }

  /** Groups of items that share a space. */
  Collection<List<AuditedItem>> spacefuls() {
    return itemsBySpace.values();
  }

  /** Items that share a space, the item among them. */
  List<AuditedItem> withIts(AuditedItem item) {
    return itemsBySpace.getOrDefault(item.space().id(), List.of());
  }

  /** Total mass in a state of the bodies that pass a test. */
  long massG(LoadState state, Predicate<Body> counts) {
    long sumG = 0L;
    for (int i = 0; i < state.size(); i++) {
      if (counts.test(loading.bodies().get(i))) {
        sumG += state.massG(i);
      }
    }
    return sumG;
  }

  /** Indices of the bodies that pass a test. */
  int[] bodies(Predicate<Body> counts) {
    return IntStream.range(0, loading.bodies().size())
        .filter(i -> counts.test(loading.bodies().get(i)))
        .toArray();
  }

  /** Mass in a state of a body by its key; zero if there is no such body. */
  long massG(LoadState state, String key) {
    int body = loading.indexOf(key);
    return body < 0 ? 0L : state.massG(body);
  }

  /** Whether a space has bars but no floor on them. */
  static boolean hasBareBars(Space space) {
    return space.bars().filter(bars -> !bars.platformFloor()).isPresent();
  }

  /** Doors among the named ones that are on a side, in the order named. */
  static List<FittedDoor> doors(Rig rig, List<String> ids, Facing side) {
    List<FittedDoor> found = new ArrayList<>();
    for (String id : ids) {
      FittedDoor door = rig.doors().get(id);
      if (door != null && door.door().side() == side) {
        found.add(door);
      }
    }
    return found;
  }

  /** What a rating allows in a state. */
  static long allowedG(Ratings ratings, LoadState state) {
    if (state.kind() == LoadKind.PARKED) {
      return ratings.staticG();
    }
    return state.surface() == Surface.OFF_ROAD ? ratings.offRoadG() : ratings.roadG();
  }
}
