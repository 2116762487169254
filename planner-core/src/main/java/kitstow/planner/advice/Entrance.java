package kitstow.planner.advice;

import java.util.Optional;
import kitstow.planner.model.AccessAxis;
import kitstow.planner.model.Facing;
import kitstow.planner.model.FittedDoor;
import kitstow.planner.model.FittedModule;
import kitstow.planner.model.Rig;
import kitstow.planner.model.Space;

/**
 * Where somebody stands to fill a space.
 *
 * @param kind kind of entrance
 * @param side side of the vehicle; absent for the cab, the roofs and what is open above
 * @param door canopy door, if there is one
 */
public record Entrance(Kind kind, Optional<Facing> side, Optional<FittedDoor> door) {
  /** Kinds of entrance, in the order in which one walks round the ute. */
  public enum Kind {
    /** Through a door of the canopy. */
    DOOR,
    /** From outside, at a side of the vehicle. */
    OUTSIDE,
    /** From above, over the edge of the tray. */
    ABOVE,
    /** On the canopy roof. */
    CANOPY_ROOF,
    /** On the cab roof. */
    CAB_ROOF,
    /** Through the doors of the cab. */
    CAB
  }

  /** The entrance to a space. */
  public static Entrance of(Rig rig, Space space) {
    Kind kind =
        switch (space.zone()) {
          case CAB -> Kind.CAB;
          case CAB_ROOF -> Kind.CAB_ROOF;
          case CANOPY_ROOF -> Kind.CANOPY_ROOF;
          case TRAY, UNDER_TRAY, CANOPY, REAR_CARRIER -> Kind.OUTSIDE;
        };
    if (kind != Kind.OUTSIDE) {
      return new Entrance(kind, Optional.empty(), Optional.empty());
    }
    Optional<Facing> side = side(rig, space);
    Optional<FittedDoor> door = door(rig, space, side);
    if (door.isPresent()) {
      return new Entrance(Kind.DOOR, Optional.of(door.get().door().side()), door);
    }
    return new Entrance(side.isPresent() ? Kind.OUTSIDE : Kind.ABOVE, side, Optional.empty());
  }

  /** The side it is filled from; of what slides out, the side it slides out to. */
  private static Optional<Facing> side(Rig rig, Space space) {
    for (String id : space.movesWith()) {
      FittedModule slide = rig.modules().get(id);
      if (slide != null) {
        return Optional.of(slide.bay().facing());
      }
    }
    AccessAxis access = space.access();
    return switch (access) {
      case LEFT -> Optional.of(Facing.LEFT);
      case RIGHT -> Optional.of(Facing.RIGHT);
      case REAR -> Optional.of(Facing.REAR);
      case FACE, ABOVE, FRONT -> Optional.empty();
    };
  }

  private static Optional<FittedDoor> door(Rig rig, Space space, Optional<Facing> side) {
    FittedDoor first = null;
    for (String id : space.doorIds()) {
      FittedDoor door = rig.doors().get(id);
      if (door != null) {
        if (side.equals(Optional.of(door.door().side()))) {
          return Optional.of(door);
        }
        first = first == null ? door : first;
      }
    }
    return Optional.ofNullable(first);
  }

  /** Place in the walk round the ute: the kerb side first, the cab last. */
  int rank(Facing kerbSide) {
    return switch (kind) {
      case DOOR -> 2 * sideRank(kerbSide);
      case OUTSIDE -> 2 * sideRank(kerbSide) + 1;
      case ABOVE -> 10;
      case CANOPY_ROOF -> 11;
      case CAB_ROOF -> 12;
      case CAB -> 13;
    };
  }

  private int sideRank(Facing kerbSide) {
    Facing facing = side.orElse(Facing.REAR);
    return facing == kerbSide ? 0 : facing == Facing.REAR ? 2 : 1;
  }
}
