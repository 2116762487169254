package kitstow.planner.catalogue;

import java.util.List;
import java.util.stream.Stream;
import kitstow.planner.geometry.SizeMm;

/** The gear of the trade: size, mass empty and as carried, use (see {@link GearRow}), flags. */
final class GearTable {
  private GearTable() {}

  static List<GearRow> all() {
    return Stream.of(
            coldAndPower(),
            fluids(),
            recovery(),
            tyresAndSpares(),
            tools(),
            kitchen(),
            camp(),
            safetyAndPersonal(),
            trade())
        .flatMap(List::stream)
        .toList();
  }

  private static List<GearRow> coldAndPower() {
    return List.of(
        row("chest-fridge-40", mm(620, 380, 440), 20, 43, "H0A", "V", "FD", "EL"),
        row("chest-fridge-60", mm(700, 430, 500), 25, 60, "H0A", "V", "FD", "EL"),
        row("chest-fridge-85", mm(760, 480, 550), 32, 80, "H0A", "V", "FD", "EL"),
        row("upright-fridge-85", mm(480, 520, 630), 24, 62, "U0A", "V", "FD", "EL"),
        row("upright-fridge-130", mm(525, 570, 750), 29, 88, "U0A", "V", "FD", "EL"),
        row("drawer-fridge-40", mm(440, 780, 280), 25, 50, "U1A", "V", "FD", "EL"),
        row("ice-box-50", mm(700, 400, 400), 9, 52, "U1B", "FD", "W"),
        row("lithium-battery-100", mm(330, 172, 215), 11, 12, "U0D", "EL", "HT").read("T38", "T39"),
        row("lithium-battery-200", mm(485, 170, 240), 22, 24, "U0D", "EL", "HT"),
        row("lead-acid-battery-100", mm(330, 175, 220), 25, 29, "U0D", "EL", "V")
            .read("T38", "T39"),
        row("charger-and-fuse-block", mm(250, 200, 70), 2, 3, "A0D", "EL", "V"),
        row("inverter-2kw", mm(400, 240, 110), 5, 6, "A0D", "EL", "V", "HT"),
        row("power-station-1kwh", mm(380, 260, 270), 13, 15, "U1B", "EL", "HT", "TH"),
        row("solar-blanket-200", mm(560, 400, 80), 6, 8, "A1B", "FR", "EL"),
        row("generator-2kva", mm(510, 290, 430), 21, 24, "U0C", "V", "F", "O"));
  }

  private static List<GearRow> fluids() {
    return List.of(
        row("water-can-20", mm(350, 170, 470), 1.3, 21.3, "U0B", "W"),
        row("water-can-25", mm(370, 290, 458), 1, 26, "U0B", "W").read("T41"),
        row("water-cube-10", mm(250, 250, 280), 0.4, 10.4, "U0B", "W"),
        row("bottled-water-carton", mm(380, 280, 320), 0.5, 18.5, "U1C", "FD"),
        row("diesel-can-20-steel", mm(345, 165, 470), 4.5, 21.5, "U0C", "F", "O", "V"),
        row("petrol-can-20-steel", mm(345, 165, 470), 4.5, 19.4, "U0C", "F", "V"),
        row("diesel-can-20-plastic", mm(345, 200, 450), 1.6, 18.5, "U0C", "F", "O", "V"),
        row("gas-cylinder-2", mm(220, 220, 290), 3, 5, "U0C", "G", "F", "V"),
        row("gas-cylinder-4", mm(260, 260, 340), 5, 9, "U0C", "G", "F", "V"),
        row("gas-cylinder-9", mm(315, 315, 480), 9, 18, "U0D", "G", "F", "V"),
        row("butane-cartridges", mm(210, 75, 200), 0.5, 1.4, "A1B", "G", "F", "HT"),
        row("engine-oil-5", mm(230, 130, 320), 0.3, 4.7, "U1D", "O"),
        row("gear-oil-4", mm(200, 130, 300), 0.3, 4, "U1D", "O"),
        row("coolant-5", mm(230, 130, 320), 0.3, 5.6, "U1D", "O"),
        row("fluids-and-sprays-kit", mm(250, 150, 220), 0.5, 3, "U0D", "O", "F"),
        row("exhaust-fluid-10", mm(300, 200, 300), 0.5, 11.4, "U1D", "O"));
  }

  private static List<GearRow> recovery() {
    return List.of(
        row("recovery-bag", mm(550, 300, 260), 13, 15, "A1E", "W"),
        row("soft-shackle-pouch", mm(300, 220, 120), 3, 4, "A1E", "W"),
        row("traction-boards-pair", mm(1150, 330, 90), 7, 8, "A2E", "W", "BK"),
        row("traction-boards-four", mm(1150, 330, 180), 14, 16, "A2E", "W", "BK"),
        row("long-shovel", mm(1400, 240, 120), 2, 2.5, "A2E", "W", "SH", "BK"),
        row("axe", mm(700, 220, 50), 2, 2.5, "A2C", "SH"),
        row("high-lift-jack", mm(1220, 130, 250), 12, 14, "A1C", "W", "O", "BK"),
        row("bottle-jack", mm(300, 300, 260), 7, 9, "U1E", "O"),
        row("exhaust-jack", mm(650, 300, 200), 5, 7, "A1C", "W"),
        row("hand-winch", mm(650, 300, 200), 16, 20, "A2D", "O"),
        row("chainsaw", mm(850, 280, 300), 7, 9, "N0C", "F", "O", "SH", "V"));
  }

  private static List<GearRow> tyresAndSpares() {
    return List.of(
        row("spare-wheel-800", mm(805, 805, 270), 30, 35, "A1C", "W").read("T43"),
        row("spare-wheel-840", mm(840, 840, 290), 36, 42, "A1C", "W").read("T44"),
        row("spare-casing", mm(805, 805, 270), 18, 21, "A1D", "W"),
        row("puncture-kit", mm(300, 220, 100), 2, 3, "A1E"),
        row("bead-breaker", mm(700, 200, 160), 9, 11, "A2D", "W"),
        row("compressor-twin", mm(420, 240, 260), 8, 11, "A1B", "EL", "HT"),
        row("compressor-single", mm(280, 150, 200), 4, 5, "A1B", "EL", "HT"),
        row("deflator-pouch", mm(180, 120, 60), 0.5, 0.8, "A1B"),
        row("cv-joint", mm(750, 180, 180), 9, 12, "A2D", "O"),
        row("wheel-bearing-kit", mm(250, 200, 150), 4, 5, "A2D", "O"),
        row("universal-joints", mm(250, 150, 110), 4, 5, "A2D"),
        row("belts-and-hoses", mm(420, 320, 110), 2, 3, "A1D"),
        row("filters", mm(360, 300, 220), 3, 4, "A0C", "DR"),
        row("alternator", mm(250, 200, 200), 6, 8, "A1D", "EL"),
        row("shock-absorbers", mm(650, 160, 160), 8, 10, "A2D", "O"),
        row("electrical-spares", mm(350, 250, 120), 3, 4, "A1C", "EL"),
        row("fasteners-tin", mm(350, 250, 130), 5, 7, "A2C"));
  }

  private static List<GearRow> tools() {
    return List.of(
        row("tool-roll", mm(600, 160, 130), 10, 13, "A2C"),
        row("socket-set", mm(430, 320, 90), 8, 10, "A2C"),
        row("torque-wrench", mm(650, 100, 80), 3, 4, "A1C"),
        row("impact-wrench", mm(450, 350, 160), 6, 8, "A2C", "EL", "TH"),
        row("multimeter-pouch", mm(260, 200, 100), 1, 2, "A1C", "EL", "FR"),
        row("battery-welder", mm(350, 300, 150), 6, 8, "A1D", "EL"));
  }

  private static List<GearRow> kitchen() {
    return List.of(
        row("gas-stove-two-burner", mm(600, 350, 120), 5, 7, "F1B", "W", "HT"),
        row("butane-stove", mm(350, 300, 110), 2, 2.5, "F1B"),
        row("camp-oven", mm(340, 310, 230), 8, 10, "U2C", "W"),
        row("pot-nest", mm(280, 280, 190), 3, 4, "A1B"),
        row("crockery-box", mm(400, 300, 220), 5, 7, "U1B", "FR", "FD"),
        row("pantry-box-dry", mm(500, 350, 270), 2, 16, "U1A", "FD", "DR"),
        row("pantry-box-tins", mm(400, 300, 220), 1.5, 18, "U1B", "FD"),
        row("spice-caddy", mm(260, 160, 260), 1, 4, "U0B", "FD", "FR"),
        row("drinks-carton", mm(400, 270, 125), 0.5, 9.5, "A1B", "FD", "HT"),
        row("washing-up-tub", mm(400, 330, 150), 2, 3, "A1B", "W"),
        row("rubbish-bag", mm(550, 400, 250), 1, 12, "A0B", "W"),
        row("grill-and-tripod", mm(620, 420, 70), 5, 8, "F2C", "W"),
        row("water-filter-pump", mm(320, 220, 160), 2, 3, "U0C", "W"));
  }

  private static List<GearRow> camp() {
    return List.of(
        row("folding-armchair", mm(950, 200, 200), 4, 6, "A1B", "BK"),
        row("roll-top-table", mm(900, 180, 160), 5, 7, "A1B", "BK"),
        row("flat-table", mm(1200, 610, 65), 8, 11, "S1B", "BK"),
        row("swag-single", mm(850, 380, 380), 8, 14, "A1B", "W", "BK"),
        row("swag-double", mm(1400, 400, 400), 16, 22, "A1B", "W", "BK"),
        row("touring-tent", mm(1250, 260, 260), 18, 26, "A1C", "W", "BK"),
        row("rooftop-tent-soft", mm(1450, 1250, 330), 45, 65, "F-B", "W", "BK"),
        row("rooftop-tent-hard", mm(2150, 1300, 200), 65, 95, "F-B", "W", "BK"),
        row("awning-walls", mm(900, 260, 210), 6, 10, "A1C", "W"),
        row("tent-ladder", mm(900, 480, 90), 6, 9, "A1B", "BK"),
        row("bedding", mm(700, 400, 350), 4, 6, "A1B", "DR", "BK"),
        row("mattress-double", mm(750, 300, 300), 5, 7, "A1B", "DR", "BK"),
        row("camp-lights", mm(400, 220, 130), 2, 4, "A1B", "EL", "FR"),
        row("flushing-toilet", mm(420, 390, 360), 5, 22, "U0B", "W", "V"),
        row("folding-toilet", mm(400, 400, 140), 3, 4, "A1B", "W"),
        row("shower-unit", mm(460, 330, 190), 6, 9, "U0B", "W", "EL"),
        row("shower-tent", mm(900, 220, 220), 3, 6, "A1B", "W"),
        row("firewood", mm(600, 400, 350), 1, 22, "A1C", "W", "BK"),
        row("fire-pit", mm(460, 460, 90), 6, 10, "F2B", "W", "HT"),
        row("ground-mat", mm(1300, 200, 200), 3, 6, "A2B", "W", "BK"));
  }

  private static List<GearRow> safetyAndPersonal() {
    return List.of(
        row("first-aid-kit", mm(360, 260, 160), 2.5, 4, "A1E", "DR", "HT"),
        row("extinguisher-1", mm(110, 110, 330), 1.6, 2, "U0E"),
        row("extinguisher-2", mm(130, 130, 400), 3.5, 4.5, "U0E"),
        row("fire-blanket", mm(220, 220, 50), 0.5, 0.8, "A1E"),
        row("satellite-messenger", mm(220, 160, 90), 0.6, 1.2, "A0E", "EL", "FR", "TH"),
        row("hand-held-radios", mm(260, 160, 90), 0.8, 1.2, "A0A", "EL"),
        row("grab-bag", mm(450, 300, 200), 6, 9, "A1E", "DR"),
        row("warning-triangles", mm(460, 250, 80), 2, 3, "A1E"),
        row("clothes-bag", mm(650, 350, 300), 8, 13, "A1B", "DR"),
        row("boots-tub", mm(500, 350, 300), 5, 9, "U2B", "W"),
        row("laptop", mm(400, 300, 80), 3, 4, "A0B", "FR", "EL", "TH", "DR"),
        row("camera-case", mm(460, 340, 190), 6, 10, "A1A", "FR", "EL", "TH", "DR"),
        row("drone-case", mm(360, 270, 170), 3, 5, "A1C", "FR", "EL", "TH"),
        row("rod-tube", mm(1600, 110, 110), 2, 4, "A1C", "BK", "FR"),
        row("bicycle", mm(1750, 250, 1050), 13, 17, "U0C", "W", "BK"),
        row("child-seat", mm(480, 450, 650), 8, 14, "---"),
        row("dog-crate", mm(700, 500, 550), 9, 34, "U1A", "V", "HT"));
  }

  private static List<GearRow> trade() {
    return List.of(
        row("extension-ladder", mm(3900, 450, 180), 20, 27, "F1B", "BK"),
        row("step-ladder", mm(2500, 600, 160), 13, 18, "F1B", "BK"),
        row("stacking-tool-boxes", mm(560, 360, 720), 25, 40, "U1A", "TH"),
        row("mitre-saw", mm(680, 520, 420), 15, 22, "U0B", "FR"),
        row("site-compressor", mm(500, 430, 480), 26, 34, "U0B", "O"),
        row("gas-nail-gun", mm(420, 380, 150), 5, 7, "A1B", "G", "F"),
        row("rotary-hammer", mm(480, 390, 140), 7, 11, "A2B"),
        row("fastener-organiser", mm(440, 360, 120), 6, 12, "F2A"),
        row("pipe-tube", mm(4000, 160, 160), 8, 40, "F1B", "BK"),
        row("cement-bag", mm(550, 350, 120), 0.2, 20.2, "F2C", "DR"),
        row("paint-pail", mm(280, 280, 290), 1, 14, "U1C", "F", "V", "O"),
        row("hose-reel", mm(450, 200, 450), 8, 20, "U1B"),
        row("cones-and-signs", mm(450, 450, 750), 8, 14, "U0C", "BK"));
  }

  private static GearRow row(
      String id, SizeMm size, double emptyKg, double fullKg, String use, String... flags) {
    return GearRow.of(id, size, emptyKg, fullKg, use, flags);
  }

  private static SizeMm mm(int lengthMm, int widthMm, int heightMm) {
    return new SizeMm(lengthMm, widthMm, heightMm);
  }
}
