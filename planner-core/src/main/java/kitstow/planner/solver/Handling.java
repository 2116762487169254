package kitstow.planner.solver;

import java.util.List;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Reach;
import kitstow.planner.packing.Ground;
import kitstow.planner.packing.WayOut;

/**
 * How handy and well balanced a packing is, as one number, the lower the better: things to move
 * before daily gear comes out, groups torn apart, sides out of balance, height of the gear. Decides
 * only between packings that are alike in all that weighs more. The weights are judgement.
 */
final class Handling {
  /** One thing to move before something that is needed daily; many times a day counts threefold. */
  static final long MOVE = 100L;

  /** One space more over which a group that wants to ride together is spread. */
  static final long SPREAD = 60L;

  /** One kilogram beyond the allowed difference of the sides. */
  static final long SIDE_KG = 10L;

  /** One millimetre of mean height of the gear. */
  static final long HEIGHT_MM = 1L;

  private static final int BITS = 14;

  private final LongMemory memory = new LongMemory(BITS);

  /** Things to move in one space. */
  long of(RigView view, int site, Ground ground) {
    List<PlacedItem> there = ground.in(site);
    if (there.size() < 2) {
      return 0L;
    }
    long key = Ground.mix(ground.fingerprint(site) ^ ((long) view.number() << 32) ^ (site + 1L));
    long known = memory.get(key);
    if (known == LongMemory.UNKNOWN) {
      known = of(there);
      memory.put(key, known);
    }
    return known;
  }

  /** Things to move in one space that holds these items. */
  static long of(List<PlacedItem> inSpace) {
    long moves = 0L;
    for (PlacedItem item : inSpace) {
      Reach reach = item.item().reach();
      if (reach == Reach.MANY_A_DAY || reach == Reach.DAILY) {
        moves += (reach == Reach.MANY_A_DAY ? 3L : 1L) * WayOut.toMoveFirst(item, inSpace).size();
      }
    }
    return moves;
  }
}
