package kitstow.planner.catalogue;

import static kitstow.planner.catalogue.Basis.COMMON_PRACTICE;
import static kitstow.planner.catalogue.Basis.OUR_CHOICE;

import java.util.List;
import java.util.Map;
import java.util.Set;
import kitstow.planner.model.KeepClear;
import kitstow.planner.model.KeepClear.Face;
import kitstow.planner.model.KeepClear.Kind;
import kitstow.planner.model.SupplyKind;

/** What the catalogue adds to the rows of {@link GearTable}, by catalogue id. */
final class GearExtras {
  private static final int VENT_MM = 50;
  private static final int LID_MM = 200;
  private static final KeepClear LID = new KeepClear(Face.TOP, LID_MM, Kind.LID);
  private static final KeepClear VENT = new KeepClear(Face.LENGTH_END, VENT_MM, Kind.AIR);

  /** Air behind an upright fridge: 30 to 50 mm, common practice, no source. */
  private static final List<KeepClear> UPRIGHT =
      List.of(new KeepClear(Face.WIDTH_END, 40, Kind.AIR), new KeepClear(Face.TOP, 40, Kind.AIR));

  /**
   * Room to keep while it is carried. Vents 50 mm, trade article, key T34, and common practice; lid
   * 200 mm, common practice. A drawer fridge breathes at its face: 10 mm, our choice, is what its
   * bay leaves. A generator and fuel cans need no room while they are carried.
   */
  static final Map<String, List<KeepClear>> KEEP_CLEAR =
      Map.of(
          "chest-fridge-40", List.of(VENT, LID),
          "chest-fridge-60", List.of(VENT, LID),
          "chest-fridge-85", List.of(VENT, LID),
          "upright-fridge-85", UPRIGHT,
          "upright-fridge-130", UPRIGHT,
          "drawer-fridge-40", List.of(new KeepClear(Face.WIDTH_END, 10, Kind.AIR)),
          "charger-and-fuse-block", List.of(VENT),
          "inverter-2kw", List.of(VENT),
          "dog-crate", List.of(VENT));

  /** What is used up of it: full less empty. */
  static final Map<SupplyKind, Set<String>> CONTENT =
      Map.of(
          SupplyKind.WATER,
          Set.of("water-can-20", "water-can-25", "water-cube-10", "bottled-water-carton"),
          SupplyKind.FUEL,
          Set.of("diesel-can-20-steel", "petrol-can-20-steel", "diesel-can-20-plastic"),
          SupplyKind.GAS,
          Set.of("gas-cylinder-2", "gas-cylinder-4", "gas-cylinder-9", "butane-cartridges"),
          SupplyKind.FOOD,
          Set.of(
              "chest-fridge-40",
              "chest-fridge-60",
              "chest-fridge-85",
              "upright-fridge-85",
              "upright-fridge-130",
              "drawer-fridge-40",
              "pantry-box-dry",
              "pantry-box-tins",
              "spice-caddy",
              "drinks-carton"));

  /** Heavy loose tools, jacks and winches. */
  static final Set<String> HEAVY_TOOLS =
      Set.of(
          "axe",
          "high-lift-jack",
          "bottle-jack",
          "hand-winch",
          "bead-breaker",
          "tool-roll",
          "socket-set",
          "torque-wrench",
          "impact-wrench",
          "stacking-tool-boxes",
          "mitre-saw",
          "site-compressor",
          "rotary-hammer");

  /** Bedding and clothes. */
  static final Set<String> BEDDING = Set.of("bedding", "mattress-double", "clothes-bag");

  /**
   * What nobody carries in the rain, besides what the table keeps dry: electric things, food and
   * crockery in boxes that are not tight, cartons, hand and power tools in no closed steel box.
   * Common practice.
   */
  static final Set<String> UNDER_COVER =
      Set.of(
          "chest-fridge-40",
          "chest-fridge-60",
          "chest-fridge-85",
          "upright-fridge-85",
          "upright-fridge-130",
          "drawer-fridge-40",
          "lithium-battery-100",
          "lithium-battery-200",
          "lead-acid-battery-100",
          "charger-and-fuse-block",
          "inverter-2kw",
          "power-station-1kwh",
          "solar-blanket-200",
          "bottled-water-carton",
          "compressor-twin",
          "compressor-single",
          "wheel-bearing-kit",
          "alternator",
          "electrical-spares",
          "tool-roll",
          "socket-set",
          "torque-wrench",
          "impact-wrench",
          "multimeter-pouch",
          "battery-welder",
          "crockery-box",
          "pantry-box-tins",
          "spice-caddy",
          "drinks-carton",
          "camp-lights",
          "satellite-messenger",
          "hand-held-radios",
          "drone-case",
          "child-seat",
          "mitre-saw",
          "rotary-hammer");

  /**
   * What must be at hand from a seat; the larger extinguisher is the second one, for the kitchen.
   * Common practice.
   */
  static final Set<String> CAB = Set.of("first-aid-kit", "extinguisher-1");

  /** Soft bags that may take other shapes of about the same volume. */
  static final Set<String> SOFT = Set.of("recovery-bag", "bedding", "clothes-bag");

  /** Starts empty and fills on the way. */
  static final String RUBBISH = "rubbish-bag";

  /** Rubbish in kilograms per person and day. */
  static final Range RUBBISH_PER_PERSON_DAY = new Range(0.3, 0.5, COMMON_PRACTICE);

  /** What wet canvas adds in kilograms. */
  static final Map<String, Range> WET =
      Map.of(
          "swag-single", new Range(2, 4, COMMON_PRACTICE),
          "swag-double", new Range(3, 5, COMMON_PRACTICE),
          "touring-tent", new Range(4, 6, COMMON_PRACTICE),
          "rooftop-tent-soft", new Range(3, 6, COMMON_PRACTICE),
          "boots-tub", new Range(1, 3, COMMON_PRACTICE));

  /** How far the volume of another shape may be off. */
  static final Range SHAPE_VOLUME_RATIO = new Range(0.98, 1.02, OUR_CHOICE);

  private GearExtras() {}
}
