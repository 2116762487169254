package kitstow.planner.packing;

import static kitstow.planner.testkit.ItemBuilder.anItem;
import static kitstow.planner.testkit.SpaceBuilder.aSpace;

import java.util.EnumSet;
import java.util.Random;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.geometry.Turn;
import kitstow.planner.model.Environment;
import kitstow.planner.model.Zone;
import kitstow.planner.testkit.ItemBuilder;
import kitstow.planner.testkit.RigBuilder;

/** One space with gear drawn at random: all invented. */
final class OneSpace {
  static final String ID = "box";
  static final SizeMm ROOM = new SizeMm(1200, 600, 700);

  private static final Turn[] ALL = EnumSet.allOf(Turn.class).toArray(new Turn[0]);

  private OneSpace() {}

  /** A rig with the space, its foremost, left, lowest corner at 2600, -900, 2000. */
  static RigBuilder rig() {
    return RigBuilder.aBareDualCab()
        .uteSpace(
            aSpace(ID, 2600, -900, 2000, ROOM).zone(Zone.CAB).environment(Environment.OPEN_AIR));
  }

  /** A thing of any size that may stand in all turns. */
  static ItemBuilder thing(int number, Random random) {
    return anItem("thing-" + number)
        .size(
            80 + 10 * random.nextInt(30),
            80 + 10 * random.nextInt(25),
            80 + 10 * random.nextInt(20))
        .turns(ALL[0], ALL);
  }
}
