package kitstow.planner.catalogue;

import static kitstow.planner.catalogue.Basis.COMMON_PRACTICE;
import static kitstow.planner.catalogue.Basis.OUR_CHOICE;
import static kitstow.planner.catalogue.Basis.computed;
import static kitstow.planner.catalogue.Basis.trade;

import java.util.List;

/** Ranges of accessories. Their boxes only say over what length the mass is spread. */
final class AccessoryRanges {
  private AccessoryRanges() {}

  static List<EntryRanges> all() {
    return List.of(
        ofMass("front-bar-winch", 50, 100, trade("T4", "T5"))
            .size("box", 450, 1750, 450, OUR_CHOICE),
        ofMass("rear-bar", 28, 35, computed(trade("T4") + ": 70 kg with a spare of 35 to 42 kg"))
            .size("box", 300, 1700, 350, OUR_CHOICE),
        ofMass("tow-bar", 10, 20, trade("T5", "T64")).size("box", 400, 1200, 200, OUR_CHOICE),
        ofMass("side-steps", 10, 30, trade("T64", "T43")).size("box", 1700, 1750, 150, OUR_CHOICE),
        ofMass(
                "snorkel-lights-wiring",
                0,
                10,
                computed(trade("T43") + ": 30 kg with a second battery of 20 to 30 kg"))
            .size("box", 1800, 1600, 1200, OUR_CHOICE),
        ofMass("second-battery", 20, 30, trade("T64", "T5")).size("box", 330, 175, 220, OUR_CHOICE),
        ofMass("underbody-plates", 20, 45, trade("T43")).size("box", 1500, 900, 20, OUR_CHOICE),
        ofMass("roof-rack", 30, 65, trade("T4", "T17")).size("box", 1300, 1250, 120, OUR_CHOICE),
        ofMass("awning-straight", 10, 15, COMMON_PRACTICE)
            .size("box", 2550, 150, 110, COMMON_PRACTICE),
        ofMass("awning-wrap-around", 20, 30, COMMON_PRACTICE)
            .size("box", 2150, 220, 170, COMMON_PRACTICE),
        ofMass("solar-panel-200", 11, 13, COMMON_PRACTICE)
            .size("box", 1490, 680, 35, COMMON_PRACTICE),
        ofMass("long-haul-mud", 10, 40, COMMON_PRACTICE).size("box", 4500, 1700, 200, OUR_CHOICE),
        ofMass("larger-tyres", 25, 60, COMMON_PRACTICE + "; " + trade("T15"))
            .size("box", 4000, 1700, 800, OUR_CHOICE),
        ofMass("long-range-tank-extra", 20, 35, COMMON_PRACTICE)
            .size("box", 1100, 500, 300, OUR_CHOICE),
        ofMass("central-divider", 8, 14, COMMON_PRACTICE)
            .exactly("boxLengthMm", 30, OUR_CHOICE)
            .exactly("boxWidthMm", 1650, COMMON_PRACTICE)
            .exactly("boxHeightMm", 790, OUR_CHOICE + ": 800 mm cut to a canopy of 795 mm inside"),
        ofMass("drop-down-table", 4, 8, COMMON_PRACTICE)
            .with("boxLengthMm", 700, 1000, COMMON_PRACTICE)
            .exactly("boxWidthMm", 40, OUR_CHOICE)
            .exactly("boxHeightMm", 400, COMMON_PRACTICE),
        ofMass("pressure-vent-fan", 2, 3, COMMON_PRACTICE)
            .size("box", 150, 150, 150, COMMON_PRACTICE),
        ofMass("lift-off-lugs", 2, 2, COMMON_PRACTICE).size("box", 1000, 1775, 100, OUR_CHOICE),
        ofMass("lift-off-legs", 25, 40, COMMON_PRACTICE)
            .exactly("boxLengthMm", 1000, OUR_CHOICE)
            .exactly("boxWidthMm", 1775, OUR_CHOICE)
            .exactly("boxHeightMm", 2000, COMMON_PRACTICE));
  }

  private static EntryRanges ofMass(String id, double minKg, double maxKg, String basis) {
    return new EntryRanges(id).with("massKg", minKg, maxKg, basis);
  }
}
