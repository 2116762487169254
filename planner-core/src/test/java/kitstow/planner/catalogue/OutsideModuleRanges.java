package kitstow.planner.catalogue;

import static kitstow.planner.catalogue.Basis.COMMON_PRACTICE;
import static kitstow.planner.catalogue.Basis.OUR_CHOICE;
import static kitstow.planner.catalogue.Basis.trade;

import java.util.List;

/** Ranges of the modules under the deck, on roofs and in the open. */
final class OutsideModuleRanges {
  private OutsideModuleRanges() {}

  static List<ModuleRow> all() {
    return List.of(
        // Boxes under the deck: the longer side runs along the vehicle, which is their opening.
        new ModuleRow("under-tray-box-front")
            .outside(480, 600, 400)
            .chosenInside("inside", 440, 560, 365)
            .ownKg(11, 17)
            .rating(50, 40, 35),
        new ModuleRow("under-tray-box-rear")
            .outside(420, 500, 320)
            .chosenInside("inside", 385, 460, 285)
            .ownKg(9, 14)
            .rating(35, 28, 22),
        new ModuleRow("trundle-drawer")
            .outside(range(1400, 1700), range(900, 1050), range(180, 220))
            // The trade gives 130 to 170 mm of height inside.
            .inside("inside", 1580, 890, 155)
            .ownKg(35, 60)
            .slide(200, 150, 110, 70, 90),
        new ModuleRow("headboard-water-tank")
            .outside(900, 200, 260)
            .ownKg(6, 9)
            .tank(40, 6, COMMON_PRACTICE + "; 35 to 40 L in " + trade("T16")),
        new ModuleRow("underslung-water-tank")
            .outside(300, 1000, 240)
            .ownKg(8, 12)
            .tank(60, 8, COMMON_PRACTICE),
        new ModuleRow("cab-roof-platform")
            .chosenOutside(1300, 1250, 90, "1300 x 1250 in the trade, height chosen")
            .chosenInside("top", 1300, 1250, 600)
            .ownKg(20, 30)
            .bars(3, /* floor= */ true, 200),
        platform("canopy-roof-platform-1500", 1500),
        platform("canopy-roof-platform-1700", 1700),
        new ModuleRow("crossbars-pair")
            .chosenOutside(800, 1350, 80, "1350 wide in the trade, spread and height chosen")
            .chosenInside("top", 800, 1350, 600)
            .ownKg(6, 10)
            .bars(2, /* floor= */ false, 500),
        new ModuleRow("crossbars-three")
            .chosenOutside(1300, 1350, 80, "1350 wide in the trade, spread and height chosen")
            .chosenInside("top", 1300, 1350, 600)
            .ownKg(6, 10)
            .bars(3, /* floor= */ false, 500),
        new ModuleRow("ladder-rack")
            .chosenOutside(1800, 1850, 60, "1800 x 1850 in the trade, height of the bars chosen")
            .chosenInside("top", 1800, 1850, 500)
            .ownKg(15, 35)
            .staticKg(60, 100)
            .bars(2, /* floor= */ false, 1200),
        new ModuleRow("rear-spare-carrier")
            .chosenOutside(330, 870, 870, "round a wheel of 840 mm")
            .chosenInside("wheel", 300, 850, 850)
            .ownKg(18, 35)
            .holds(45, COMMON_PRACTICE + ": per wheel"),
        new ModuleRow("side-spare-pod")
            .chosenOutside(820, 290, 820, "820 x 290 in the trade, stands upright")
            .chosenInside("wheel", 810, 280, 810)
            .ownKg(8, 14)
            .holds(45, COMMON_PRACTICE),
        new ModuleRow("fuel-can-holder")
            .outside(370, 190, 500)
            .chosenInside("can", 354, 176, 484)
            .ownKg(2.5, 4)
            .holds(25, COMMON_PRACTICE),
        new ModuleRow("gas-cylinder-holder")
            .chosenOutside(300, 300, 360, "300 mm across in the trade, height chosen")
            .chosenInside("cylinder", 270, 270, 345)
            .ownKg(2, 4)
            .holds(12, OUR_CHOICE + ": a full cylinder of 9 kg; mount, " + trade("T55")),
        new ModuleRow("traction-board-bracket")
            // The boards stand on their long edge.
            .outside(200, 1150, 350)
            .chosenInside("boards", 190, 1150, 335)
            .ownKg(2, 4)
            .holds(20, COMMON_PRACTICE));
  }

  private static ModuleRow platform(String id, int lengthMm) {
    return new ModuleRow(id)
        .chosenOutside(lengthMm, 1350, 90, "1500 to 1700 x 1350 in the trade, height chosen")
        .chosenInside("top", lengthMm, 1350, 600)
        .ownKg(22, 35)
        .ratings(range(150, 200), range(100, 150), range(70, 100))
        .bars(3, /* floor= */ true, 350);
  }

  private static Range range(double min, double max) {
    return new Range(min, max, COMMON_PRACTICE);
  }
}
