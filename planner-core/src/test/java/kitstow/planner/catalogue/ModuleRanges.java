package kitstow.planner.catalogue;

import static kitstow.planner.catalogue.Basis.COMMON_PRACTICE;
import static kitstow.planner.catalogue.Basis.OUR_CHOICE;
import static kitstow.planner.catalogue.Basis.computed;
import static kitstow.planner.catalogue.Basis.trade;

import java.util.ArrayList;
import java.util.List;

/**
 * Ranges of the fit-out modules inside a canopy. Where the trade writes two lengths without saying
 * which runs along the opening, the reading that fits a canopy is taken and said in the row.
 */
final class ModuleRanges {
  /** A frame or its drawers: only the whole set has a range, see {@link #sets()}. */
  private static final String PART_OF_SET = computed("the range of the whole set");

  private ModuleRanges() {}

  /** Several modules that make up one thing of the trade. */
  record ModuleSet(String frame, String insert, int inserts, Range ownKg) {}

  static List<ModuleSet> sets() {
    return List.of(
        new ModuleSet("drawer-pair-frame", "drawer-insert", 2, new Range(55, 85, COMMON_PRACTICE)),
        new ModuleSet(
            "pantry-drawer-frame", "pantry-drawer-insert", 3, new Range(28, 40, COMMON_PRACTICE)),
        new ModuleSet(
            "tool-drawer-frame", "tool-drawer-insert", 4, new Range(38, 55, COMMON_PRACTICE)));
  }

  static List<EntryRanges> all() {
    List<EntryRanges> rows = new ArrayList<>();
    rows.addAll(drawers());
    rows.addAll(fridges());
    rows.addAll(shelves());
    rows.addAll(others());
    rows.addAll(OutsideModuleRanges.all());
    return rows;
  }

  private static List<ModuleRow> drawers() {
    return List.of(
        row("side-drawer")
            .outside(850, 500, 260)
            .inside("inside", 780, 430, 200)
            .ownKg(22, 32)
            .slide(120, 90, 70, 100, 100)
            .bay("deck", 850, 500, 155)
            .bayStaticKg("deck", 60, 60, OUR_CHOICE),
        row("long-drawer")
            .outside(range(1400, 1650), range(450, 500), range(220, 280))
            .chosenInside("inside", 1330, 410, 190)
            .ownKg(40, 60)
            .slide(150, 110, 90, 70, 100)
            .bay("deck", 1400, 480, 160)
            .bayStaticKg("deck", 80, 80, OUR_CHOICE),
        row("drawer-pair-frame")
            .outside(900, 1000, 300)
            .ownKg(25, 35, PART_OF_SET)
            .bay("drawer-a", 880, 460, 260)
            .bay("drawer-b", 880, 460, 260)
            .bay("deck", 900, 1000, 400)
            .bayStaticKg("deck", 150, 200, COMMON_PRACTICE),
        row("drawer-insert")
            .chosenOutside(870, 455, 255, "goes into the frame")
            .inside("inside", 820, 430, 220)
            .ownKg(15, 25, PART_OF_SET)
            .slide(120, 90, 70, 100, 100),
        row("pantry-tower")
            .outside(800, 250, 700)
            .chosenInside("lower", 770, 224, 310)
            .chosenInside("upper", 770, 224, 335)
            .spaceStaticKg("lower", 40)
            .spaceStaticKg("upper", 25)
            .ownKg(16, 24)
            .slide(60, 45, 35, 100, 100),
        row("pantry-drawer-frame")
            .outside(650, 450, 650)
            .ownKg(10, 16, PART_OF_SET)
            .bay("drawer-low", 625, 410, 200)
            .bay("drawer-middle", 625, 410, 200)
            .bay("drawer-top", 625, 410, 200),
        row("pantry-drawer-insert")
            .chosenOutside(620, 405, 195, "goes into the frame")
            .chosenInside("inside", 590, 385, 170)
            .ownKg(5, 8, PART_OF_SET)
            .slide(30, 22, 18, 100, 100),
        row("tool-drawer-frame")
            .outside(600, 600, 500)
            .ownKg(14, 24, PART_OF_SET)
            .bay("drawer-1", 575, 560, 114)
            .bay("drawer-2", 575, 560, 114)
            .bay("drawer-3", 575, 560, 114)
            .bay("drawer-4", 575, 560, 114),
        row("tool-drawer-insert")
            .chosenOutside(570, 555, 110, "goes into the frame")
            .chosenInside("inside", 540, 530, 92)
            .ownKg(6, 8, PART_OF_SET)
            .slide(40, 30, 25, 100, 100));
  }

  private static List<ModuleRow> fridges() {
    return List.of(
        row("fridge-slide-flat")
            .outside(800, 470, 55)
            .chosenInside("top", 780, 450, 560)
            .ownKg(14, 20)
            .slide(100, 80, 65, 90, 100),
        row("fridge-drop-slide")
            .outside(830, 520, 120)
            .chosenInside("top", 820, 500, 560)
            .ownKg(24, 34)
            .slide(75, 65, 55, 100, 100),
        row("fridge-tilt-slide")
            .outside(800, 480, 80)
            .chosenInside("top", 780, 460, 560)
            .ownKg(18, 26)
            .slide(80, 65, 55, 90, 90),
        row("upright-fridge-bay")
            .chosenOutside(600, 560, 720, "20 mm of frame round the clear size")
            // Clear 520 across and 560 deep, so that the fridge of 520 has 40 mm of air behind it.
            .inside("fridge", 560, 520, 680)
            .ownKg(6, 12),
        row("drawer-fridge-bay")
            // Across first in the trade: a drawer fridge is 440 across and 780 deep.
            .outside(800, 460, 300)
            .chosenInside("fridge", 790, 450, 285)
            .ownKg(8, 14)
            .holds(60, COMMON_PRACTICE + ": full"));
  }

  private static List<ModuleRow> shelves() {
    String roomAbove = "thickness and the room above it";
    return List.of(
        row("fixed-shelf-850")
            .chosenOutside(450, 850, 295, roomAbove)
            .chosenInside("on-shelf", 450, 840, 265)
            .ownKg(4.25, 7.65, computed("5 to 9 kg per metre"))
            .rating(51, 38.25, 29.75),
        row("fixed-shelf-1650")
            .chosenOutside(450, 1650, 295, roomAbove)
            .chosenInside("on-shelf", 450, 1640, 265)
            .ownKg(8.25, 14.85, computed("5 to 9 kg per metre"))
            .rating(99, 74.25, 57.75),
        row("roof-shelf-940")
            .chosenOutside(350, 940, 295, "cut to a canopy of 945 inside")
            .chosenInside("on-shelf", 350, 930, 265)
            .ownKg(6, 10)
            .rating(25, 18, 12),
        row("roof-shelf-1440")
            .chosenOutside(350, 1440, 295, "cut to a canopy of 1445 inside")
            .chosenInside("on-shelf", 350, 1430, 265)
            .ownKg(6, 10)
            .rating(25, 18, 12),
        row("roof-shelf-1640")
            .chosenOutside(350, 1640, 295, "cut to a canopy of 1645 inside")
            .chosenInside("on-shelf", 350, 1630, 265)
            .ownKg(6, 10)
            .rating(25, 18, 12),
        row("roof-shelf-1650")
            .chosenOutside(350, 1650, 295, roomAbove)
            .chosenInside("on-shelf", 350, 1640, 265)
            .ownKg(6, 10)
            .rating(25, 18, 12));
  }

  private static List<ModuleRow> others() {
    return List.of(
        row("slide-out-kitchen")
            .outside(900, 450, 250)
            .chosenInside("under-bench", 840, 400, 180)
            .ownKg(28, 45)
            .slide(50, 40, 30, 100, 100),
        row("electrical-board")
            .outside(700, 250, 500)
            .chosenInside("board", 660, 205, 460)
            .ownKg(10, 18),
        row("battery-tray")
            .outside(
                new Range(350, 370, computed("battery of 330 mm and 30 mm")),
                new Range(200, 210, computed("battery of 175 mm and 30 mm")),
                new Range(245, 255, computed("battery of 220 mm and 30 mm")))
            .chosenInside("battery", 350, 185, 230)
            .ownKg(2, 4),
        row("gas-locker")
            .outside(320, 320, 500)
            .chosenInside("cylinder", 316, 316, 490)
            .ownKg(4, 7)
            .holds(20, OUR_CHOICE + ": a full cylinder of 18 kg; mount, " + trade("T55")),
        row("load-barrier")
            .chosenOutside(30, 1650, 790, "800 mm cut to a canopy of 795 inside")
            .ownKg(8, 14));
  }

  private static ModuleRow row(String id) {
    return new ModuleRow(id);
  }

  private static Range range(double min, double max) {
    return new Range(min, max, COMMON_PRACTICE);
  }
}
