package kitstow.tui.edit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.Boxes;
import kitstow.planner.geometry.PointMm;
import kitstow.planner.model.FittedModule;
import kitstow.planner.model.Item;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Pin;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Placement;
import kitstow.planner.model.Rig;
import kitstow.planner.model.Space;
import kitstow.planner.model.SpacePointMm;

/**
 * Gear that stays where it stands when modules come, go or move, though the spaces of the floor
 * beside them are others then. What is in a module goes with it. What a module has been put upon
 * does not stay, nor what stood on such gear only.
 */
final class InPlace {
  private final Loading before;
  private final Rig after;
  private final Map<String, Space> kept = new LinkedHashMap<>();

  /**
   * Gear under other modules.
   *
   * @param before where it stands
   * @param after the rig with its modules elsewhere
   */
  InPlace(Loading before, Rig after) {
    this.before = before;
    this.after = after;
    List<PlacedItem> fromBelow = new ArrayList<>(before.placed().values());
    fromBelow.sort(Comparator.comparingInt(item -> item.box().minZMm()));
    for (PlacedItem item : fromBelow) {
      spaceOf(item).ifPresent(space -> kept.put(item.key(), space));
    }
  }

  /** The space a unit is in now; none if it does not stay. */
  private Optional<Space> spaceOf(PlacedItem item) {
    Space same = after.spaces().get(item.space().id());
    if (same != null) {
      return Optional.of(same)
          .filter(space -> !isUnderModule(at(item, space), space) && !hasLostItsBase(item));
    }
    return after.spaces().values().stream()
        .filter(space -> mayTake(space, item))
        .filter(space -> !isUnderModule(item.box(), space) && isCarried(item, space))
        .findFirst();
  }

  /** Where a unit is in a space that may have moved. */
  private static BoxMm at(PlacedItem item, Space space) {
    PointMm old = item.space().box().corner();
    PointMm now = space.box().corner();
    return item.box()
        .moved(new PointMm(now.xMm() - old.xMm(), now.yMm() - old.yMm(), now.zMm() - old.zMm()));
  }

  private boolean mayTake(Space space, PlacedItem item) {
    return !before.rig().spaces().containsKey(space.id())
        && space.hostId().equals(item.space().hostId())
        && space.access() == item.space().access()
        && Boxes.protrusionMm(item.box(), space.box()) == 0;
  }

  /** Whether a module that was not there before, and that the space is not in, is there now. */
  private boolean isUnderModule(BoxMm box, Space space) {
    for (FittedModule module : after.modules().values()) {
      String id = module.module().id();
      FittedModule old = before.rig().modules().get(id);
      boolean isThereAnew = old == null || !old.box().equals(module.box());
      if (isThereAnew && !space.inModules().contains(id) && Boxes.overlap(box, module.box())) {
        return true;
      }
    }
    return false;
  }

  private boolean isCarried(PlacedItem item, Space space) {
    return item.box().minZMm() == space.box().minZMm()
        || bases(item).stream().anyMatch(base -> space.equals(kept.get(base.key())));
  }

  private boolean hasLostItsBase(PlacedItem item) {
    List<PlacedItem> bases = bases(item);
    return !bases.isEmpty() && bases.stream().noneMatch(base -> kept.containsKey(base.key()));
  }

  /** What a unit stands on, beside the floor. */
  private List<PlacedItem> bases(PlacedItem item) {
    return before.in(item.space().id()).stream()
        .filter(base -> base.box().maxZMm() == item.box().minZMm())
        .filter(base -> Boxes.footprintOverlapMm2(base.box(), item.box()) > 0L)
        .toList();
  }

  /** The lines of what stays, in the order of the plan and in terms of the spaces there are now. */
  List<Placement> lines() {
    List<Placement> lines = new ArrayList<>();
    for (PlacedItem item : before.placed().values()) {
      Space space = kept.get(item.key());
      if (space != null) {
        lines.add(line(item, space));
      }
    }
    return lines;
  }

  private static Placement line(PlacedItem item, Space space) {
    Placement old = item.placement();
    return space.id().equals(old.spaceId())
        ? old
        : new Placement(
            old.itemId(),
            old.unit(),
            space.id(),
            old.shape(),
            old.turn(),
            space.cornerOf(item.box().corner()));
  }

  /** Items with their pins in terms of the spaces there are now, as far as their units stay. */
  List<Item> pinned(List<Item> items) {
    List<Item> pinned = new ArrayList<>();
    for (Item item : items) {
      pinned.add(item.pinned(item.pin().map(pin -> pinned(item, pin))));
    }
    return pinned;
  }

  private Pin pinned(Item item, Pin pin) {
    Space old = before.rig().spaces().get(pin.spaceId());
    if (old == null || after.spaces().containsKey(pin.spaceId())) {
      return pin;
    }
    List<Space> into =
        before.placed().values().stream()
            .filter(placed -> placed.item().id().equals(item.id()))
            .map(placed -> kept.get(placed.key()))
            .filter(Objects::nonNull)
            .distinct()
            .toList();
    if (into.size() != 1) {
      return pin;
    }
    Space now = into.get(0);
    Optional<SpacePointMm> corner = pin.corner().map(old::pointAt).map(now::cornerOf);
    return new Pin(now.id(), corner, pin.turn());
  }
}
