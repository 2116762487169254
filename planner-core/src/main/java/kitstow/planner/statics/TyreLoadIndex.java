package kitstow.planner.statics;

import java.util.OptionalLong;
import kitstow.planner.model.TyreSet;

/**
 * Load capacity of one tyre by its load index. Capacity falls with pressure; the placard rules.
 * Source: UN Regulation 54 Annex 4 (also ADR 96/00 Appendix A), read in public charts.
 */
public final class TyreLoadIndex {
  private static final int FIRST = 100;

  private static final int[] CAPACITY_KG = {
    800, 825, 850, 875, 900, 925, 950, 975, 1000, 1030, 1060, 1090, 1120, 1150, 1180, 1215, 1250,
    1285, 1320, 1360, 1400, 1450, 1500, 1550, 1600, 1650, 1700, 1750, 1800, 1850, 1900
  };

  private TyreLoadIndex() {}

  /** Capacity of one tyre in grams; absent outside load index 100 to 130. */
  public static OptionalLong capacityG(int loadIndex) {
    int row = loadIndex - FIRST;
    return row < 0 || row >= CAPACITY_KG.length
        ? OptionalLong.empty()
        : OptionalLong.of(CAPACITY_KG[row] * 1000L);
  }

  /** Capacity of all tyres of an axle in grams; absent where that of one is. */
  public static OptionalLong capacityG(TyreSet tyres) {
    OptionalLong one = capacityG(tyres.loadIndex());
    return one.isPresent() ? OptionalLong.of(one.getAsLong() * tyres.count()) : one;
  }
}
