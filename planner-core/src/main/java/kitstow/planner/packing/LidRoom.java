package kitstow.planner.packing;

import java.util.Collection;
import java.util.Optional;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.Boxes;
import kitstow.planner.model.Canopy;
import kitstow.planner.model.Facing;
import kitstow.planner.model.FittedDoor;
import kitstow.planner.model.FittedModule;
import kitstow.planner.model.KeepClear;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Rig;
import kitstow.planner.model.Tray;

/**
 * Whether a lid can be opened. On a slide it is opened when pulled out: what rides on the same
 * slide always counts; roof, shelves and fixed neighbours count at the pulled-out place, and at the
 * closed place too unless the extension brings the whole lid past the jamb. Elsewhere it is judged
 * where it stands.
 */
public final class LidRoom {
  private final Rig rig;
  private final Collection<PlacedItem> all;

  private LidRoom(Rig rig, Collection<PlacedItem> all) {
    this.rig = rig;
    this.all = all;
  }

  /**
   * Judge of the lids on a rig.
   *
   * @param all everything that is placed
   */
  public static LidRoom on(Rig rig, Collection<PlacedItem> all) {
    return new LidRoom(rig, all);
  }

  /** Whether the lid of an item can be opened. */
  public boolean opens(PlacedItem item, KeepClear lid) {
    BoxMm region = KeptRoom.above(item.box(), lid.clearMm());
    if (item.space().movesWith().isEmpty()) {
      return AirRoom.free(rig, all, item, region);
    }
    String slideId = item.space().movesWith().get(0);
    for (PlacedItem other : all) {
      if (!other.is(item)
          && other.space().movesWith().contains(slideId)
          && Boxes.overlap(region, other.box())) {
        return false;
      }
    }
    FittedModule slide = rig.modules().get(slideId);
    if (slide == null) {
      throw new IllegalStateException("no such module: " + slideId);
    }
    if (!clearOfFixedThings(item, slide, region.moved(slide.pullOut()))) {
      return false;
    }
    if (pastJamb(item.box().moved(slide.pullOut()), slide)) {
      return true;
    }
    return region.maxZMm() <= item.space().box().maxZMm()
        && clearOfFixedThings(item, slide, region);
  }

  private boolean clearOfFixedThings(PlacedItem item, FittedModule slide, BoxMm region) {
    String slideId = slide.module().id();
    for (PlacedItem other : all) {
      if (!other.space().movesWith().contains(slideId) && Boxes.overlap(region, other.box())) {
        return false;
      }
    }
    for (FittedModule other : rig.modules().values()) {
      String id = other.module().id();
      boolean own =
          id.equals(slideId)
              || slide.inModules().contains(id)
              || item.space().inModules().contains(id)
              || other.movesWith().contains(slideId);
      if (!own && Boxes.overlap(region, other.box())) {
        return false;
      }
    }
    return !aboveCanopyCeiling(region);
  }

  private boolean aboveCanopyCeiling(BoxMm region) {
    Optional<Canopy> canopy = rig.scenario().canopy();
    Optional<Tray> tray = rig.scenario().tray();
    if (!canopy.isPresent() || !tray.isPresent()) {
      return false;
    }
    BoxMm box = canopy.get().insideOn(tray.get());
    return Boxes.footprintOverlapMm2(region, box) > 0L && region.maxZMm() > box.maxZMm();
  }

  private boolean pastJamb(BoxMm pulledOut, FittedModule slide) {
    Facing facing = slide.bay().facing();
    int plane =
        switch (facing) {
          case LEFT -> slide.bay().box().minYMm();
          case RIGHT -> slide.bay().box().maxYMm();
          case REAR -> slide.bay().box().maxXMm();
        };
    for (String doorId : slide.bay().doorIds()) {
      FittedDoor door = rig.doors().get(doorId);
      if (door != null && door.door().side() == facing) {
        plane = door.planeMm();
        break;
      }
    }
    return switch (facing) {
      case LEFT -> pulledOut.maxYMm() <= plane;
      case RIGHT -> pulledOut.minYMm() >= plane;
      case REAR -> pulledOut.minXMm() >= plane;
    };
  }
}
