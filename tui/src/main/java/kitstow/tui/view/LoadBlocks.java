package kitstow.tui.view;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.model.Body;
import kitstow.planner.model.FittedModule;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Rig;
import kitstow.planner.model.Space;
import kitstow.planner.model.Zone;

/** Tray, canopy, spaces, modules and gear as blocks for a view. */
final class LoadBlocks {
  /** Turns a box into a block of one view. */
  interface Projection {
    Block block(String key, BoxMm box, boolean solid);
  }

  private final Loading loading;
  private final Keys keys;

  LoadBlocks(Loading loading, Keys keys) {
    this.loading = loading;
    this.keys = keys;
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

  /** Everything that is drawn, for the window of a view. */
  List<BoxMm> all() {
    List<BoxMm> all = new ArrayList<>(hosts());
    loading.rig().modules().values().forEach(module -> all.add(module.box()));
    loading.placed().values().forEach(item -> all.add(item.box()));
    return all;
  }

  /** Blocks of what a view shows: tray and canopy always, the rest by its box and zone. */
  List<Block> blocks(Projection projection, Predicate<BoxMm> shown, Predicate<Zone> zones) {
    List<Block> blocks = new ArrayList<>();
    for (BoxMm host : hosts()) {
      blocks.add(projection.block("", host, /* solid= */ false));
    }
    for (Space space : loading.rig().spaces().values()) {
      boolean inModule = !space.inModules().isEmpty();
      if (!inModule
          && zones.test(space.zone())
          && shown.test(space.box())
          && !loading.in(space.id()).isEmpty()) {
        blocks.add(projection.block("", space.box(), /* solid= */ false));
      }
    }
    for (FittedModule module : loading.rig().modules().values()) {
      String key = keys.modules().getOrDefault(module.module().id(), "");
      if (zones.test(module.bay().zone()) && shown.test(module.box())) {
        blocks.add(projection.block(key, module.box(), /* solid= */ false));
      }
    }
    for (PlacedItem item : loading.placed().values()) {
      String key = keys.items().getOrDefault(item.key(), "");
      if (zones.test(item.space().zone()) && shown.test(item.box())) {
        blocks.add(projection.block(key, item.box(), /* solid= */ true));
      }
    }
    return blocks;
  }

  /** The bodies, for what is drawn beside the load. */
  List<Body> bodies() {
    return loading.bodies();
  }
}
