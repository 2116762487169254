package kitstow.planner.catalogue;

import static kitstow.planner.catalogue.Basis.COMMON_PRACTICE;
import static kitstow.planner.catalogue.Basis.OUR_CHOICE;
import static kitstow.planner.catalogue.Basis.computed;
import static kitstow.planner.catalogue.Basis.trade;

import java.util.List;

/** Ranges of trays and canopies. */
final class BodyRanges {
  private BodyRanges() {}

  static List<EntryRanges> trays() {
    return List.of(
        aluminium("tray-1800-aluminium").with("lengthMm", 1650, 1850, COMMON_PRACTICE),
        tray("tray-1800-steel")
            .with("lengthMm", 1650, 1850, COMMON_PRACTICE)
            .with("massKg", 240, 310, trade("T62") + ": about twice aluminium, 308 kg read"),
        aluminium("tray-2200-aluminium").with("lengthMm", 2100, 2250, COMMON_PRACTICE),
        aluminium("tray-2550-aluminium").with("lengthMm", 2400, 2600, COMMON_PRACTICE));
  }

  private static EntryRanges aluminium(String id) {
    return tray(id)
        .with("massKg", 110, 170, COMMON_PRACTICE + "; heavy duty 160 kg in " + trade("T62"));
  }

  private static EntryRanges tray(String id) {
    return new EntryRanges(id)
        .exactly("widthMm", 1855, COMMON_PRACTICE)
        .with("deckDepthMm", 100, 160, OUR_CHOICE)
        .with("headboardHeightMm", 700, 900, COMMON_PRACTICE)
        .exactly("bayKg", 100, OUR_CHOICE)
        .with("deckKg", 400, 600, OUR_CHOICE);
  }

  /** Rear axle behind the front edge of a tray, which decides where its wheels are. */
  static List<EntryRanges> rearAxles() {
    String dualCab = computed(trade("T2"));
    return List.of(
        rearAxle("tray-1800-aluminium", 230, 430, dualCab),
        rearAxle("tray-1800-steel", 230, 430, dualCab),
        rearAxle("tray-2200-aluminium", 550, 800, COMMON_PRACTICE),
        rearAxle("tray-2550-aluminium", 900, 1200, COMMON_PRACTICE));
  }

  private static EntryRanges rearAxle(String id, int minMm, int maxMm, String basis) {
    return new EntryRanges(id).with("rearAxleBehindFrontMm", minMm, maxMm, basis);
  }

  static List<EntryRanges> canopies() {
    return List.of(
        canopy("canopy-1000")
            .exactly("lengthMm", 1000, COMMON_PRACTICE)
            .exactly("insideLengthMm", 945, COMMON_PRACTICE)
            .exactly("sideDoorClearMm", 830, COMMON_PRACTICE)
            .with("insideL", 1275, 1285, computed("inside length x 1710 x 795"))
            .with("massKg", 75, 110, COMMON_PRACTICE),
        canopy("canopy-1500")
            .exactly("lengthMm", 1500, COMMON_PRACTICE)
            .exactly("insideLengthMm", 1445, COMMON_PRACTICE)
            .exactly("sideDoorClearMm", 1330, COMMON_PRACTICE)
            .with("insideL", 1955, 1965, computed("inside length x 1710 x 795"))
            .with("massKg", 105, 150, COMMON_PRACTICE),
        canopy("canopy-1700")
            .exactly("lengthMm", 1700, COMMON_PRACTICE)
            .exactly("insideLengthMm", 1645, COMMON_PRACTICE)
            .exactly("sideDoorClearMm", 1530, COMMON_PRACTICE)
            .with("rearDoorClearMm", 1200, 1300, OUR_CHOICE)
            .with("insideL", 2225, 2240, computed("inside length x 1710 x 795"))
            .with("massKg", 115, 175, COMMON_PRACTICE + "; 100 to 200 kg in " + trade("T43")));
  }

  private static EntryRanges canopy(String id) {
    return new EntryRanges(id)
        .with("widthMm", 1760, 1790, COMMON_PRACTICE)
        .with("heightMm", 850, 900, COMMON_PRACTICE)
        .with("insideWidthMm", 1690, 1730, COMMON_PRACTICE)
        .with("insideHeightMm", 790, 840, COMMON_PRACTICE)
        .with("doorClearHeightMm", 680, 730, COMMON_PRACTICE)
        .with("strutWidthMm", 5, 30, OUR_CHOICE)
        .with("strutHeightMm", 50, 250, OUR_CHOICE)
        .with("roofMovingKg", 100, 150, COMMON_PRACTICE + ": road rating of a roof platform")
        .with("roofParkedOverMoving", 2, 3, trade("T76") + ", and " + COMMON_PRACTICE)
        .exactly("liftOffFittings", 1, OUR_CHOICE)
        .with("bayKg", 200, 600, OUR_CHOICE);
  }
}
