package kitstow.planner.model;

import java.util.List;

/**
 * A canopy door and what passes through it. Along is x for a side door and y for a rear door, both
 * in the canopy frame; z is up from the canopy floor.
 *
 * @param id unique in the canopy
 * @param title shown to people
 * @param side the side it is on
 * @param fromMm where the clear opening starts along the side
 * @param toMm where it ends
 * @param sillZMm lower edge of the clear opening
 * @param headZMm upper edge of the clear opening
 * @param struts parts of the opening that struts or catches take away
 */
public record Door(
    String id,
    String title,
    Facing side,
    int fromMm,
    int toMm,
    int sillZMm,
    int headZMm,
    List<Strut> struts) {
  /** Copies its collections. */
  public Door {
    struts = List.copyOf(struts);
  }

  /** A rectangle of the opening that is not clear, in the door's own coordinates. */
  public record Strut(int fromMm, int toMm, int lowerZMm, int upperZMm) {}
}
