package kitstow.planner.catalogue;

import static kitstow.planner.catalogue.Basis.COMMON_PRACTICE;
import static kitstow.planner.catalogue.Basis.OUR_CHOICE;
import static kitstow.planner.catalogue.Basis.computed;
import static kitstow.planner.catalogue.Basis.trade;

import java.util.List;

/** Ranges of the utes: mid-size dual and extended cabs, and the large cab-chassis. */
final class UteRanges {
  private UteRanges() {}

  static List<EntryRanges> all() {
    return List.of(
        midSize("mid-dual-cab-tub")
            .with("kerbAsPickUpKg", 2000, 2350, COMMON_PRACTICE)
            .with("rearRowXMm", 2250, 2400, COMMON_PRACTICE)
            .with("part tub Kg", 100, 150, OUR_CHOICE)
            .with("part rear-bench Kg", 30, 50, OUR_CHOICE),
        midSize("mid-dual-cab-chassis")
            .with("rearRowXMm", 2250, 2400, COMMON_PRACTICE)
            .with("part rear-bench Kg", 30, 50, OUR_CHOICE),
        midSize("mid-extended-cab-chassis").with("rearRowXMm", 2250, 2400, COMMON_PRACTICE),
        largeUpgraded("large-single-cab-chassis-upgraded"));
  }

  private static EntryRanges midSize(String id) {
    return ofEveryUte(id)
        .with("wheelbaseMm", 3050, 3300, COMMON_PRACTICE)
        .with("kerbAsCabChassisKg", 1850, 2150, COMMON_PRACTICE + "; 2,012 kg in " + trade("T43"))
        .with("frontShareWithoutBodyPercent", 57, 61, COMMON_PRACTICE)
        .with("gvmKg", 2900, 3350, COMMON_PRACTICE + "; 3,200 kg usual in " + trade("T58"))
        .with("frontAxleKg", 1350, 1500, COMMON_PRACTICE)
        .with("rearAxleKg", 1750, 2020, COMMON_PRACTICE + "; 1,850 and 1,910 kg in " + trade("T1"))
        .with("gcmKg", 5700, 6350, COMMON_PRACTICE + "; 6,000 kg usual in " + trade("T58"))
        .exactly("brakedTowingKg", 3500, COMMON_PRACTICE)
        .with("ballKg", 300, 350, COMMON_PRACTICE)
        .with("ballBehindRearAxleMm", 1150, 1350, COMMON_PRACTICE)
        .with("cabRoofMovingKg", 50, 200, trade("T17", "T59") + ": 50 to 100 kg usual")
        .with("fuelL", 70, 80, COMMON_PRACTICE);
  }

  private static EntryRanges largeUpgraded(String id) {
    return ofEveryUte(id)
        .with("wheelbaseMm", 3100, 3200, COMMON_PRACTICE)
        .with("kerbAsCabChassisKg", 2050, 2400, COMMON_PRACTICE)
        .with("frontShareWithoutBodyPercent", 52, 57, COMMON_PRACTICE)
        .with("gvmKg", 3700, 4490, COMMON_PRACTICE + ": certified mass increase")
        .with("frontAxleKg", 1450, 1700, COMMON_PRACTICE)
        .with("rearAxleKg", 2500, 3000, COMMON_PRACTICE + ": upgraded")
        .with("gcmKg", 6500, 7500, COMMON_PRACTICE)
        .with("brakedTowingKg", 3500, 4500, COMMON_PRACTICE)
        .with("ballKg", 350, 450, COMMON_PRACTICE)
        .with("ballBehindRearAxleMm", 1200, 1500, COMMON_PRACTICE)
        .with("cabRoofMovingKg", 75, 150, trade("T17", "T59"))
        .with("fuelL", 90, 130, COMMON_PRACTICE);
  }

  private static EntryRanges ofEveryUte(String id) {
    return new EntryRanges(id)
        .with("trackMm", 1540, 1600, OUR_CHOICE)
        .with("emptyAxleToleranceKg", 30, 50, OUR_CHOICE)
        .with("axleSumAboveGvmKg", 1, 1000, trade("T4"))
        .exactly("unbrakedTowingKg", 750, OUR_CHOICE)
        .with("cabRoofParkedOverMoving", 2, 3, trade("T76") + ", and " + COMMON_PRACTICE)
        .with("fuelKgPerL", 0.82, 0.85, trade("T42"))
        .with("fuelTankBoxOverCapacity", 1.0, 1.05, OUR_CHOICE)
        .with("frontRowXMm", 1450, 1550, COMMON_PRACTICE)
        .exactly("seatAsideMm", 380, OUR_CHOICE)
        .with("seatZMm", 900, 1050, OUR_CHOICE)
        .with("emptyHeightMm", 650, 800, OUR_CHOICE)
        .with("cabRoofZMm", 1750, 1950, OUR_CHOICE)
        .with("foremostAheadOfFrontAxleMm", 800, 1000, OUR_CHOICE)
        .with("rearmostBehindRearAxleMm", 1150, 1450, OUR_CHOICE)
        .with("ballZMm", 450, 520, OUR_CHOICE)
        .with("springHangerAheadOfAxleMm", 550, 700, OUR_CHOICE)
        .with("springHangerBehindAxleMm", 650, 800, OUR_CHOICE)
        .with(
            "tyresAboveAxleLimitKg", 0, 1300, computed("UN Regulation 54, load index of the tyre"))
        .with("part factory-spare Kg", 30, 35, COMMON_PRACTICE)
        .with("cabSpaceKg", 3, 60, OUR_CHOICE)
        .size("cabRoofBay", 1300, 1250, 700, OUR_CHOICE);
  }
}
