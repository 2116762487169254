package kitstow.tui.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.Boxes;
import kitstow.planner.geometry.PointMm;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Placement;
import kitstow.planner.model.Rig;
import kitstow.planner.model.Space;

/**
 * Gear that stays where it stands on a floor that a module has been put on or taken from, though
 * the spaces of the floor are others now.
 */
final class InPlace {
  private final Loading before;
  private final Map<String, Space> spaces;
  private final List<PlacedItem> staying = new ArrayList<>();
  private final Map<String, Space> into = new LinkedHashMap<>();

  private InPlace(Loading before, Rig after) {
    this.before = before;
    this.spaces = after.spaces();
  }

  /**
   * The lines of a plan in terms of the spaces of another rig. Gear whose space is there is in it;
   * what was in one that is not is in the new one around it, if any is of the same host and filled
   * from the same side; what is in none, or stood on such gear only, keeps its line.
   */
  static List<Placement> on(Loading before, Rig after) {
    InPlace inPlace = new InPlace(before, after);
    List<Placement> lines = new ArrayList<>();
    for (PlacedItem item : before.placed().values()) {
      lines.add(inPlace.line(item));
    }
    return lines;
  }

  private Placement line(PlacedItem item) {
    Placement old = item.placement();
    if (spaces.containsKey(old.spaceId())) {
      return old;
    }
    for (Space space : spaces.values()) {
      if (mayTake(space, item) && isCarried(item, space)) {
        staying.add(item);
        into.put(item.key(), space);
        BoxMm box = item.box();
        PointMm corner = new PointMm(box.minXMm(), box.minYMm(), box.minZMm());
        return new Placement(
            old.itemId(), old.unit(), space.id(), old.shape(), old.turn(), space.cornerOf(corner));
      }
    }
    return old;
  }

  private boolean mayTake(Space space, PlacedItem item) {
    return !before.rig().spaces().containsKey(space.id())
        && space.hostId().equals(item.space().hostId())
        && space.access() == item.space().access()
        && Boxes.protrusionMm(item.box(), space.box()) == 0;
  }

  private boolean isCarried(PlacedItem item, Space space) {
    return item.box().minZMm() == space.box().minZMm()
        || staying.stream()
            .filter(below -> space.equals(into.get(below.key())))
            .map(PlacedItem::box)
            .anyMatch(
                below ->
                    below.maxZMm() == item.box().minZMm()
                        && Boxes.footprintOverlapMm2(below, item.box()) > 0L);
  }
}
