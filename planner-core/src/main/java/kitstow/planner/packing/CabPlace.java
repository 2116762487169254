package kitstow.planner.packing;

import kitstow.planner.model.Item;
import kitstow.planner.model.Mark;
import kitstow.planner.model.Space;
import kitstow.planner.model.Zone;

/** What must be at hand from a seat and where it is. Common practice, no source. */
public final class CabPlace {
  private CabPlace() {}

  /** Whether an item that belongs in the cab would be elsewhere in a space. */
  public static boolean lacking(Item item, Space space) {
    return item.marks().contains(Mark.CAB) && space.zone() != Zone.CAB;
  }
}
