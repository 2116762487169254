package kitstow.planner.model;

import java.util.List;

/**
 * A canopy door in its place: along is x for a side door and y for a rear door, vehicle frame.
 *
 * @param door the door
 * @param fromMm where the clear opening starts along the side, vehicle frame
 * @param toMm where it ends
 * @param sillZMm lower edge above the ground
 * @param headZMm upper edge above the ground
 * @param struts parts of the opening that are not clear, vehicle frame
 * @param planeMm y (side door) or x (rear door) of the inner face of the wall it is in
 */
public record FittedDoor(
    Door door,
    int fromMm,
    int toMm,
    int sillZMm,
    int headZMm,
    List<Door.Strut> struts,
    int planeMm) {
  /** Copies its collections. */
  public FittedDoor {
    struts = List.copyOf(struts);
  }
}
