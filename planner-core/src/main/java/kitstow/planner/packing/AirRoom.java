package kitstow.planner.packing;

import java.util.Collection;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.Boxes;
import kitstow.planner.model.Environment;
import kitstow.planner.model.FittedModule;
import kitstow.planner.model.KeepClear;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Rig;

/** Whether the air faces of an item are free of gear and, unless in the open, of walls. */
public final class AirRoom {
  private AirRoom() {}

  /** Whether one of the regions before a face is free. */
  public static boolean kept(Rig rig, Collection<PlacedItem> all, PlacedItem item, KeepClear keep) {
    for (BoxMm region : KeptRoom.alternatives(item.box(), item.placement().turn(), keep)) {
      if (free(rig, all, item, region)) {
        return true;
      }
    }
    return false;
  }

  /**
   * Whether a region holds no other gear and reaches into no wall of its space; off a slide, into
   * no module either.
   */
  static boolean free(Rig rig, Collection<PlacedItem> all, PlacedItem item, BoxMm region) {
    boolean walled = !item.space().environment().contains(Environment.OPEN_AIR);
    if (walled && Boxes.protrusionMm(region, item.space().box()) > 0) {
      return false;
    }
    for (PlacedItem other : all) {
      if (!other.is(item) && Boxes.overlap(region, other.box())) {
        return false;
      }
    }
    boolean stays = item.space().movesWith().isEmpty();
    for (FittedModule module : rig.modules().values()) {
      if (stays
          && !item.space().inModules().contains(module.module().id())
          && Boxes.overlap(region, module.box())) {
        return false;
      }
    }
    return true;
  }
}
