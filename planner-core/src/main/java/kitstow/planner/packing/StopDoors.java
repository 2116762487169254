package kitstow.planner.packing;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.model.AccessAxis;
import kitstow.planner.model.Facing;
import kitstow.planner.model.FittedDoor;
import kitstow.planner.model.FittedModule;
import kitstow.planner.model.Rig;
import kitstow.planner.model.Space;
import kitstow.planner.model.Stop;
import kitstow.planner.model.Zone;

/** Whether a thing comes out of its space where some sides and doors stay shut. */
public final class StopDoors {
  private final Rig rig;
  private final Stop stop;

  private StopDoors(Rig rig, Stop stop) {
    this.rig = rig;
    this.stop = stop;
  }

  /** Judge of the ways out at a stop. */
  public static StopDoors at(Stop stop, Rig rig) {
    return new StopDoors(rig, stop);
  }

  /**
   * Whether a thing comes out there. A door that it does not pass at any time does not count, and
   * where it passes none that is for other rules to say.
   *
   * @param item closed, vehicle frame
   * @param clearanceMm room it needs around it in a door
   */
  public boolean letOut(Space space, BoxMm item, int clearanceMm) {
    if (space.zone() == Zone.CAB) {
      return true;
    }
    for (String slideId : space.movesWith()) {
      FittedModule slide = rig.modules().get(slideId);
      if (slide != null && !pullsOut(slide)) {
        return false;
      }
    }
    return !space.movesWith().isEmpty() || takenOut(space, item, clearanceMm);
  }

  private boolean pullsOut(FittedModule slide) {
    Facing side = slide.bay().facing();
    SlideTravel.Envelope bare = SlideTravel.envelope(rig, slide, List.of());
    List<FittedDoor> doors = new ArrayList<>();
    for (String doorId : slide.bay().doorIds()) {
      FittedDoor door = rig.doors().get(doorId);
      if (door != null && door.door().side() == side && SlideTravel.foulMm(bare, door) == 0) {
        doors.add(door);
      }
    }
    return slide.bay().doorIds().isEmpty() ? opens(side, slide.box().minZMm()) : anyOpens(doors);
  }

  private boolean takenOut(Space space, BoxMm item, int clearanceMm) {
    List<FittedDoor> doors = new ArrayList<>();
    for (String doorId : space.doorIds()) {
      FittedDoor door = rig.doors().get(doorId);
      if (door != null && passes(space, item, door, clearanceMm)) {
        doors.add(door);
      }
    }
    if (!space.doorIds().isEmpty()) {
      return anyOpens(doors);
    }
    int floorZMm = space.box().minZMm();
    return switch (space.access()) {
      case LEFT -> opens(Facing.LEFT, floorZMm);
      case RIGHT -> opens(Facing.RIGHT, floorZMm);
      case REAR -> opens(Facing.REAR, floorZMm);
      case ABOVE, FRONT, FACE -> true;
    };
  }

  /** What is lifted out, or taken out forward, passes whichever door is nearest. */
  private static boolean passes(Space space, BoxMm item, FittedDoor door, int clearanceMm) {
    Facing side = door.door().side();
    boolean own =
        switch (side) {
          case LEFT -> space.access() == AccessAxis.LEFT;
          case RIGHT -> space.access() == AccessAxis.RIGHT;
          case REAR -> space.access() == AccessAxis.REAR;
        };
    int along = (side == Facing.REAR ? item.widthMm() : item.lengthMm()) + clearanceMm;
    boolean lifted = space.access() == AccessAxis.ABOVE || space.access() == AccessAxis.FRONT;
    return lifted || (own && DoorOpenings.shortMm(door, along, item.heightMm() + clearanceMm) <= 0);
  }

  private boolean anyOpens(List<FittedDoor> doors) {
    boolean any = doors.isEmpty();
    for (FittedDoor door : doors) {
      any |=
          opens(door.door().side(), door.sillZMm())
              && !stop.shutDoorIds().contains(door.door().id());
    }
    return any;
  }

  private boolean opens(Facing side, int lowerZMm) {
    return !stop.shutSides().contains(side) && lowerZMm >= stop.shutBelowMm();
  }
}
