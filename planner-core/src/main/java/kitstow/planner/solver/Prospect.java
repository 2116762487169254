package kitstow.planner.solver;

import java.util.BitSet;
import java.util.List;
import kitstow.planner.model.Need;
import org.jspecify.annotations.Nullable;

/**
 * What a packing can still come to at best while it is being put together: nothing over, no more
 * moment, and home only what has found no place. Once that would be refused, the rest need not be
 * tried.
 */
final class Prospect {
  private final Packing packing;
  private final LateScores late;
  private long mustLeft;
  private long valueLeft;

  private Prospect(Packing packing, LateScores late) {
    this.packing = packing;
    this.late = late;
    this.mustLeft = packing.view().mustModulesLeft();
    this.valueLeft = packing.view().moduleValueLeft();
  }

  /**
   * Before any of some units is tried; null where a search takes whatever comes.
   *
   * @param tried units that are nowhere and may yet find a place
   */
  static @Nullable Prospect of(Packing packing, List<Integer> tried) {
    LateScores late = packing.problem().late();
    if (late == null) {
      return null;
    }
    Prospect prospect = new Prospect(packing, late);
    BitSet yetToCome = new BitSet();
    tried.forEach(yetToCome::set);
    for (int unit = 0; unit < packing.problem().units().size(); unit++) {
      if (packing.placeOf(unit) == null && !yetToCome.get(unit)) {
        prospect.lose(unit);
      }
    }
    return prospect;
  }

  /** A unit stays home. */
  void lose(int unit) {
    boolean must = packing.problem().units().get(unit).item().need() == Need.MUST;
    mustLeft += must ? 1L : 0L;
    valueLeft += packing.problem().costAtHome(unit, packing.problem().aim());
  }

  /**
   * Whether nothing that may still come of it is taken.
   *
   * @param sums loads of what has a place, on the trip that what is yet to come makes; with it
   *     their moment is no less, but for what is used up before something else and then finds no
   *     place
   */
  boolean isHopeless(LoadSums sums) {
    return late.refuses(packing.bestScore(mustLeft, valueLeft, sums.momentHalfGMm()));
  }
}
