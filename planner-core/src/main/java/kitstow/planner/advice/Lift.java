package kitstow.planner.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.model.Facing;
import kitstow.planner.model.FittedModule;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Rig;
import kitstow.planner.statics.LiftingLimit;

/**
 * Lifting one unit from the ground to its place by the revised lifting equation: hands at half its
 * height, feet 200 mm outside the edge of the body, slides pulled out, straight ahead, seldom, with
 * a good grip. The worse end of the lift counts. What lies deep can be lifted to the edge and slid
 * in, so both are told.
 *
 * @param unit the unit in its place
 * @param heightMm ground to hands at its place
 * @param reachMm feet to hands at its place
 * @param placeKg what one person should lift right to its place; zero where it is out of reach
 * @param edgeKg what one person should lift to the edge at that height; zero where it is too high
 */
public record Lift(PlacedItem unit, int heightMm, int reachMm, double placeKg, double edgeKg) {
  /** From here on a lift is looked at (common practice, no source). */
  private static final long HEAVY_G = 10_000L;

  /** Feet to the edge (from memory: the manual of the equation takes 20 cm and half the load). */
  private static final int FEET_TO_EDGE_MM = 200;

  /** Mass over what is recommended to the edge; infinite where it is too high. */
  public double index() {
    double kg = unit.item().mass().massG() / 1000.0;
    return edgeKg > 0.0 ? kg / edgeKg : Double.POSITIVE_INFINITY;
  }

  /**
   * Units of 10 kg or more that are more than one person should lift even to the edge, worst first.
   */
  public static List<Lift> tooHeavy(Loading loading) {
    List<Lift> lifts = new ArrayList<>();
    for (PlacedItem unit : loading.placed().values()) {
      if (unit.item().mass().massG() >= HEAVY_G) {
        Lift lift = of(loading, unit);
        if (lift.index() > 1.0) {
          lifts.add(lift);
        }
      }
    }
    lifts.sort(
        Comparator.comparingDouble(Lift::index)
            .thenComparingLong(lift -> lift.unit().item().mass().massG())
            .reversed());
    return lifts;
  }

  /** The lift of a unit. */
  public static Lift of(Loading loading, PlacedItem unit) {
    BoxMm box = pulledOut(loading.rig(), unit);
    int heightMm = (box.minZMm() + box.maxZMm()) / 2;
    int groundMm = box.heightMm() / 2;
    int closeMm = FEET_TO_EDGE_MM + Math.min(box.lengthMm(), box.widthMm()) / 2;
    int reachMm = Math.max(closeMm, FEET_TO_EDGE_MM + insideEdgeMm(loading, unit, box));
    double travel = LiftingLimit.travelRatio(Math.abs(heightMm - groundMm));
    double ground = kg(closeMm, groundMm, travel);
    return new Lift(
        unit,
        heightMm,
        reachMm,
        Math.min(ground, kg(reachMm, heightMm, travel)),
        Math.min(ground, kg(closeMm, heightMm, travel)));
  }

  private static double kg(int horizontalMm, int heightMm, double travelRatio) {
    return LiftingLimit.kg(
        LiftingLimit.horizontalRatio(horizontalMm),
        LiftingLimit.heightRatio(heightMm),
        travelRatio);
  }

  private static BoxMm pulledOut(Rig rig, PlacedItem unit) {
    BoxMm box = unit.box();
    for (String id : unit.space().movesWith()) {
      FittedModule slide = rig.modules().get(id);
      if (slide != null) {
        box = box.moved(slide.pullOut());
      }
    }
    return box;
  }

  /** How far the middle of a box lies inside the edge of the body where one stands. */
  private static int insideEdgeMm(Loading loading, PlacedItem unit, BoxMm box) {
    int halfWidthMm = loading.scenario().tray().map(tray -> tray.size().widthMm() / 2).orElse(0);
    int rearMm =
        loading
            .scenario()
            .tray()
            .map(tray -> tray.frontXMm() + tray.size().lengthMm())
            .orElse(loading.scenario().ute().rearmostXMm());
    int middleXMm = (box.minXMm() + box.maxXMm()) / 2;
    int middleYMm = (box.minYMm() + box.maxYMm()) / 2;
    Optional<Facing> side = Entrance.of(loading.rig(), unit.space()).side();
    if (!side.isPresent()) {
      return halfWidthMm - Math.abs(middleYMm);
    }
    return switch (side.get()) {
      case LEFT -> halfWidthMm + middleYMm;
      case RIGHT -> halfWidthMm - middleYMm;
      case REAR -> rearMm - middleXMm;
    };
  }
}
