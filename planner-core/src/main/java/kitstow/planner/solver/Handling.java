package kitstow.planner.solver;

import java.util.List;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Reach;
import kitstow.planner.packing.Ground;
import kitstow.planner.packing.WayOut;

/** Things to move before daily gear comes out; what is needed many times a day counts threefold. */
final class Handling {
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
