package kitstow.planner.packing;

import kitstow.planner.model.Growth;
import kitstow.planner.model.Item;
import kitstow.planner.model.Mark;
import kitstow.planner.model.Settings;
import kitstow.planner.model.Space;
import kitstow.planner.model.Zone;

/**
 * What may ride on a roof: bulky things, others only while they are light. How light is common
 * practice, no source; light bulky gear only is also what a trade article asks for, key T71.
 */
public final class RoofLoad {
  private RoofLoad() {}

  /**
   * By how much an item is too heavy for a space on a roof, in grams; 0 where it may ride. Bulky
   * things and spaces on no roof know no such limit.
   */
  public static long excessG(Item item, Space space, Settings settings) {
    boolean roof = space.zone() == Zone.CAB_ROOF || space.zone() == Zone.CANOPY_ROOF;
    if (!roof || item.marks().contains(Mark.BULKY)) {
      return 0L;
    }
    return Math.max(0L, heaviestG(item) - settings.roofGearG());
  }

  /** What a unit weighs at its heaviest, in grams: full, with all it gains on the trip. */
  public static long heaviestG(Item item) {
    return item.mass().massG() + item.growth().map(RoofLoad::gainedG).orElse(0L);
  }

  private static long gainedG(Growth growth) {
    return growth.upToG() + growth.wetG();
  }
}
