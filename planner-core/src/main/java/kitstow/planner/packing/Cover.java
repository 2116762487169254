package kitstow.planner.packing;

import kitstow.planner.model.Environment;
import kitstow.planner.model.Item;
import kitstow.planner.model.Mark;
import kitstow.planner.model.Space;

/** What must stay dry and where rain and spray reach it. Common practice, no source. */
public final class Cover {
  private Cover() {}

  /** Whether an item that must stay dry would be in the open in a space. */
  public static boolean lacking(Item item, Space space) {
    return item.marks().contains(Mark.DRY) && space.environment().contains(Environment.OPEN_AIR);
  }
}
