package kitstow.planner.packing;

import kitstow.planner.model.Environment;
import kitstow.planner.model.Space;

/**
 * Where gas and fuel may ride: in the open, or in a locker of its own air vented to the outside.
 */
public final class OutsideAir {
  private OutsideAir() {}

  /**
   * Whether a space is in the open, or vented outside without sharing the canopy's or cab's air.
   */
  public static boolean has(Space space) {
    boolean shared = space.airId().equals("air:canopy") || space.airId().equals("air:cab");
    return space.environment().contains(Environment.OPEN_AIR)
        || (space.environment().contains(Environment.VENTED_OUTSIDE) && !shared);
  }

  /** Whether gas and fuel may ride in two spaces, but what they give off in one is in the other. */
  static boolean isOne(Space a, Space b) {
    return a.airId().equals(b.airId()) && has(a) && has(b);
  }
}
