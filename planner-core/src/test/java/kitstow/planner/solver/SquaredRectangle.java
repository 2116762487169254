package kitstow.planner.solver;

import static kitstow.planner.testkit.ItemBuilder.anItem;
import static kitstow.planner.testkit.SpaceBuilder.aSpace;

import kitstow.planner.exact.BouwkampCode;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.geometry.Turn;
import kitstow.planner.model.Environment;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.Zone;
import kitstow.planner.testkit.RigBuilder;

/**
 * A rectangle cut into squares, all drawn up into boxes of one height: the search packs them as if
 * it did not know that they fill their space without a gap.
 */
final class SquaredRectangle {
  private static final int MM = 10;
  private static final int HEIGHT_MM = 100;

  private SquaredRectangle() {}

  /** Area of the squares that the search has placed, as a share of the rectangle. */
  static double filled(BouwkampCode code, long steps) {
    Scenario scenario = scenario(code);
    PlanSearch.Request request =
        new PlanSearch.Request(scenario, /* seed= */ 1L, steps, /* seconds= */ 0.0, 1);
    LoadPlan plan = PlanSearch.solve(request, best -> {}, () -> false).plan();
    AssertedSearch.judged(scenario, plan);
    long area = 0L;
    for (PlacedItem item : Loading.of(scenario, plan).placed().values()) {
      area += (long) item.box().lengthMm() * item.box().widthMm();
    }
    return (double) area / (MM * code.width() * MM * code.height());
  }

  private static Scenario scenario(BouwkampCode code) {
    SizeMm room = new SizeMm(MM * code.width(), MM * code.height(), HEIGHT_MM);
    RigBuilder rig =
        RigBuilder.aBareDualCab()
            .ute(ute -> ute.wheelbaseMm(20_000))
            .uteSpace(
                aSpace("rectangle", 0, 0, 3000, room)
                    .zone(Zone.CAB)
                    .environment(Environment.OPEN_AIR));
    for (int side : code.sides()) {
      rig.items(
          anItem("square-" + side)
              .size(MM * side, MM * side, HEIGHT_MM)
              .massG(1L)
              .turns(Turn.LWH)
              .value(side * side));
    }
    return rig.scenario();
  }
}
