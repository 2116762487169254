package kitstow.planner.packing;

import kitstow.planner.geometry.BoxMm;
import kitstow.planner.model.AccessAxis;
import kitstow.planner.model.Facing;
import kitstow.planner.model.FittedDoor;
import kitstow.planner.model.Rig;
import kitstow.planner.model.Space;

/** Whether an item passes a door of its space, straight in along the access axis. */
public final class DoorPassage {
  private DoorPassage() {}

  /**
   * How far an item is too large for the best door of its space; zero where it passes, where no
   * door is in the way, or where the space slides out.
   *
   * @param clearanceMm room it needs around it
   */
  public static int shortMm(Rig rig, Space space, BoxMm item, int clearanceMm) {
    boolean throughDoor =
        space.access() == AccessAxis.LEFT
            || space.access() == AccessAxis.RIGHT
            || space.access() == AccessAxis.REAR;
    if (!throughDoor || !space.movesWith().isEmpty() || space.doorIds().isEmpty()) {
      return 0;
    }
    Facing side =
        switch (space.access()) {
          case LEFT -> Facing.LEFT;
          case RIGHT -> Facing.RIGHT;
          case REAR, FRONT, ABOVE, FACE -> Facing.REAR;
        };
    int along = (side == Facing.REAR ? item.widthMm() : item.lengthMm()) + clearanceMm;
    int up = item.heightMm() + clearanceMm;
    int least = Math.max(along, up);
    for (String doorId : space.doorIds()) {
      FittedDoor door = rig.doors().get(doorId);
      if (door != null && door.door().side() == side) {
        least = Math.min(least, DoorOpenings.shortMm(door, along, up));
      }
    }
    return Math.max(0, least);
  }
}
