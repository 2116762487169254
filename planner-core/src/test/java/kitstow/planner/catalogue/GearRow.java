package kitstow.planner.catalogue;

import java.util.Set;
import kitstow.planner.geometry.SizeMm;

/**
 * What the trade says about one piece of gear.
 *
 * @param id catalogue id
 * @param size outside in carrying position
 * @param emptyKg mass without what is used up
 * @param fullKg mass as carried
 * @param stands U upright, H upright with room for a lid, N not on its side, F flat, S on edge, A
 *     any way, - as it is
 * @param bears 0 nothing, 1 about 10 kg, 2 about 30 kg on top
 * @param reach E emergency, A many times a day, B daily, C every few days, D rare, - never
 * @param flags V air, F flammable, G gas, O oil, FD food, W wet or dirty, DR keep dry, FR fragile,
 *     EL electric, HT keep cool, SH sharp, BK bulky, TH attracts theft
 * @param basis what the figures rest on
 */
record GearRow(
    String id,
    SizeMm size,
    double emptyKg,
    double fullKg,
    char stands,
    char bears,
    char reach,
    Set<String> flags,
    String basis) {

  static GearRow of(
      String id, SizeMm size, double emptyKg, double fullKg, String use, String... flags) {
    return new GearRow(
        id,
        size,
        emptyKg,
        fullKg,
        use.charAt(0),
        use.charAt(1),
        use.charAt(2),
        Set.of(flags),
        Basis.COMMON_PRACTICE);
  }

  /** The same with figures that were read. */
  GearRow read(String... keys) {
    return new GearRow(id, size, emptyKg, fullKg, stands, bears, reach, flags, Basis.trade(keys));
  }
}
