package kitstow.tui.view;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.PointMm;
import kitstow.planner.model.FittedModule;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Rig;
import kitstow.planner.model.ShiftMm;

/**
 * Where everything of a load is in a moment of the trip, what is pulled out drawn out. Without a
 * moment everything is closed.
 */
public final class LoadBoxes {
  private final Loading loading;
  private final Optional<LoadState> state;
  private final Map<String, BoxMm> items = new LinkedHashMap<>();
  private final Map<String, BoxMm> pulledOut = new LinkedHashMap<>();

  /** The boxes of a loading in a state of it. */
  public LoadBoxes(Loading loading, Optional<LoadState> state) {
    this.loading = loading;
    this.state = state.filter(one -> one.size() == loading.bodies().size());
    for (PlacedItem item : loading.placed().values()) {
      items.put(item.key(), moved(item.key(), item.box()));
    }
    for (FittedModule module : loading.rig().modules().values()) {
      BoxMm out = moved(module.module().id() + Loading.MOVING, module.box());
      if (!out.equals(module.box())) {
        pulledOut.put(module.module().id(), out);
      }
    }
  }

  private BoxMm moved(String bodyKey, BoxMm box) {
    int index = loading.indexOf(bodyKey);
    if (state.isEmpty() || index < 0) {
      return box;
    }
    ShiftMm shift = state.get().shift(index);
    return box.moved(new PointMm(shift.xMm(), shift.yMm(), 0));
  }

  /** Boxes of tray and canopy. */
  List<BoxMm> hosts() {
    List<BoxMm> hosts = new ArrayList<>();
    for (String key : List.of(Rig.TRAY, Rig.CANOPY)) {
      int index = loading.indexOf(key);
      if (index >= 0) {
        hosts.add(loading.bodies().get(index).box());
      }
    }
    return hosts;
  }

  /** Box by the body key of a unit of gear. */
  public Map<String, BoxMm> items() {
    return items;
  }

  /** Where the moving part of a module is that is pulled out, by module id. */
  Map<String, BoxMm> pulledOut() {
    return pulledOut;
  }

  /** The smallest box round everything and the rear axle line. */
  public BoxMm window() {
    List<BoxMm> all = new ArrayList<>(hosts());
    loading.rig().modules().values().forEach(module -> all.add(module.box()));
    all.addAll(items.values());
    all.addAll(pulledOut.values());
    int axleMm = loading.scenario().ute().wheelbaseMm();
    if (all.isEmpty()) {
      all.add(new BoxMm(0, -1, 0, axleMm, 1, loading.scenario().ute().cabRoofZMm()));
    }
    BoxMm round = Eye.round(all);
    return Eye.round(
        List.of(
            round,
            new BoxMm(
                axleMm, round.minYMm(), round.minZMm(), axleMm, round.maxYMm(), round.maxZMm())));
  }
}
