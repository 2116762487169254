package kitstow.planner.rules;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.model.AccessAxis;
import kitstow.planner.model.Facing;
import kitstow.planner.model.FittedDoor;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Space;
import kitstow.planner.packing.DoorOpenings;

/** An item of a fixed space passes a door of that space, straight in along its access axis. */
final class DoorAperture implements PlanRule {
  @Override
  public RuleCard card() {
    return RuleCard.practice(
        RuleId.DOOR_APERTURE,
        "an item passes the door of its space",
        "apertureClearanceMm 10",
        /* overridable= */ false);
  }

  @Override
  public List<Breach> breaches(Situation situation) {
    Loading loading = situation.loading();
    List<Breach> breaches = new ArrayList<>();
    int clearance = situation.settings().apertureClearanceMm();
    for (PlacedItem item : loading.placed().values()) {
      int over = shortMm(loading, item, clearance);
      if (over > 0) {
        breaches.add(
            new Breach(
                RuleId.DOOR_APERTURE,
                List.of(item.key(), item.space().id()),
                "",
                over,
                0.0,
                "mm",
                item.item().title() + " does not pass the door of " + item.space().title(),
                "turn it or choose a space behind a larger door"));
      }
    }
    return breaches;
  }

  /** How far an item is too large for the best door of its space; zero where it passes. */
  private static int shortMm(Loading loading, PlacedItem item, int clearance) {
    Space space = item.space();
    Facing side =
        switch (space.access()) {
          case LEFT -> Facing.LEFT;
          case RIGHT -> Facing.RIGHT;
          case REAR, FRONT, ABOVE, FACE -> Facing.REAR;
        };
    boolean throughDoor =
        space.access() == AccessAxis.LEFT
            || space.access() == AccessAxis.RIGHT
            || space.access() == AccessAxis.REAR;
    if (!throughDoor || !space.movesWith().isEmpty() || space.doorIds().isEmpty()) {
      return 0;
    }
    BoxMm box = item.box();
    int along = (side == Facing.REAR ? box.widthMm() : box.lengthMm()) + clearance;
    int up = box.heightMm() + clearance;
    int least = Math.max(along, up);
    for (String doorId : space.doorIds()) {
      FittedDoor door = loading.rig().doors().get(doorId);
      if (door != null && door.door().side() == side) {
        least = Math.min(least, DoorOpenings.shortMm(door, along, up));
      }
    }
    return Math.max(0, least);
  }
}
