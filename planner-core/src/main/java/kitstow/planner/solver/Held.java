package kitstow.planner.solver;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.List;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.packing.Wanted;

/**
 * Holds what stays in some spaces where it stands. Without it everything in a space goes down anew
 * in its order once something is taken out, moves up where it can, and one that was well placed may
 * find no place at all.
 */
final class Held {
  private Held() {}

  /**
   * Gives what stands with some units, but is not one of them, the stance of its very place.
   *
   * @return units whose stance is another one now
   */
  static List<Integer> beside(Packing packing, Collection<Integer> out) {
    BitSet sites = new BitSet();
    BitSet free = new BitSet();
    for (int unit : out) {
      free.set(unit);
      if (packing.siteOf(unit) >= 0) {
        sites.set(packing.siteOf(unit));
      }
    }
    List<Integer> held = new ArrayList<>();
    List<Long> stances = new ArrayList<>();
    for (int unit = 0; unit < packing.problem().units().size(); unit++) {
      int site = packing.siteOf(unit);
      if (site >= 0 && sites.get(site) && !free.get(unit)) {
        long stance = stanceOf(packing, unit);
        if (stance != packing.stanceOf(unit)) {
          held.add(unit);
          stances.add(stance);
        }
      }
    }
    for (int i = 0; i < held.size(); i++) {
      int unit = held.get(i);
      packing.assign(unit, packing.spaceOf(unit), stances.get(i), packing.rankOf(unit));
    }
    return held;
  }

  /** The stance of where a unit stands; as it is for what has no place, or a given one. */
  private static long stanceOf(Packing packing, int unit) {
    Wanted wanted = packing.problem().units().get(unit);
    PlacedItem item = packing.placeOf(unit);
    return item == null || packing.problem().isPinned(unit)
        ? packing.stanceOf(unit)
        : Stance.asIn(wanted, item.placement());
  }
}
