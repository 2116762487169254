package kitstow.planner.testkit;

import static kitstow.planner.testkit.BayBuilder.aBay;
import static kitstow.planner.testkit.SpaceBuilder.aSpace;

import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.AccessAxis;
import kitstow.planner.model.Environment;
import kitstow.planner.model.Facing;
import kitstow.planner.model.Zone;

/** Names and places of the spaces and bays that {@link RigBuilder#aDualCab()} has. */
public final class Rigs {
  /** In the canopy, filled from above: 800 x 800 x 800, x 2900 to 3700, y -850 to -50. */
  public static final String BOX = "box";

  /** In the canopy, filled through the left door: 800 x 800 x 700, x 2100 to 2900. */
  public static final String SHELF = "shelf";

  /** In the open behind the tray: 300 x 1000 x 600 at x 3800, y -500, z 900. */
  public static final String CARRIER = "carrier";

  /**
   * Bare bars on the canopy roof: 1600 x 1200 x 400 at x 2100, y -600, z 1800; bars at 100, 800 and
   * 1500 that take 50 kg each; items may project 300 at the ends and 100 at the sides.
   */
  public static final String RACK = "rack";

  /**
   * A platform on the cab roof: 1000 x 1200 x 400 at x 900, y -600, z 1850; bars at 100, 500 and
   * 900 that take 50 kg each.
   */
  public static final String PLATFORM = "platform";

  /** Facing the right door: 800 x 800 x 800, x 2100 to 2900, y 50 to 850, z 950 to 1750. */
  public static final String FRONT_BAY = "front-bay";

  /** Facing the right door: 800 x 800 x 800, x 2900 to 3700, y 50 to 850, z 950 to 1750. */
  public static final String REAR_BAY = "rear-bay";

  private static final SizeMm CUBE = new SizeMm(800, 800, 800);

  private Rigs() {}

  static RigBuilder furnish(RigBuilder rig) {
    return rig.canopySpace(aSpace(BOX, 900, -850, 0, CUBE))
        .canopySpace(
            aSpace(SHELF, 100, -850, 50, new SizeMm(800, 800, 700))
                .access(AccessAxis.LEFT, "left-door"))
        .traySpace(
            aSpace(CARRIER, 1800, -500, 0, new SizeMm(300, 1000, 600))
                .zone(Zone.REAR_CARRIER)
                .environment(Environment.OPEN_AIR))
        .canopySpace(
            aSpace(RACK, 100, -600, 900, new SizeMm(1600, 1200, 400))
                .zone(Zone.CANOPY_ROOF)
                .environment(Environment.OPEN_AIR)
                .bar("front", 100, Masses.always(Masses.kg(50)))
                .bar("middle", 800, Masses.always(Masses.kg(50)))
                .bar("rear", 1500, Masses.always(Masses.kg(50)))
                .projection(/* endsMm= */ 300, /* sideMm= */ 100))
        .uteSpace(
            aSpace(PLATFORM, 900, -600, 1850, new SizeMm(1000, 1200, 400))
                .zone(Zone.CAB_ROOF)
                .environment(Environment.OPEN_AIR)
                .bar("front", 100, Masses.always(Masses.kg(50)))
                .bar("middle", 500, Masses.always(Masses.kg(50)))
                .bar("rear", 900, Masses.always(Masses.kg(50)))
                .platformFloor())
        .canopyBay(aBay(FRONT_BAY, 100, 50, 50, CUBE).facing(Facing.RIGHT, "right-door"))
        .canopyBay(aBay(REAR_BAY, 900, 50, 50, CUBE).facing(Facing.RIGHT, "right-door"));
  }
}
