package kitstow.planner.solver;

import static kitstow.planner.testkit.ItemBuilder.anItem;
import static kitstow.planner.testkit.SpaceBuilder.aSpace;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import kitstow.planner.exact.BoxCase;
import kitstow.planner.exact.BoxCases;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.geometry.Turn;
import kitstow.planner.model.Environment;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Placement;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.SpacePointMm;
import kitstow.planner.model.Zone;
import kitstow.planner.statics.Bound;
import kitstow.planner.statics.Lever;
import kitstow.planner.testkit.Masses;
import kitstow.planner.testkit.OtherSettings;
import kitstow.planner.testkit.RigBuilder;

/**
 * Boxes in one space, packed by the search, beside the proved optimum. The space is high above a
 * long ute with tray and canopy ahead of its rear axle, so that the boxes are all that lies behind
 * it and nothing but the rules of place binds them.
 */
final class BoxWitness {
  /** Less than a second for seven boxes. */
  static final long STEPS_OF_SEVEN = 5_000;

  /** A part of a second for four. */
  static final long STEPS_OF_FOUR = 2_000;

  private static final String SPACE = "room";
  private static final int WHEELBASE_MM = 6000;

  /**
   * One case, and how it was packed.
   *
   * @param number number of the case
   * @param home boxes that were left home
   * @param momentHalfGMm moment of the plan that was found
   * @param optimumHalfGMm moment of the optimum
   * @param floorHalfGMm the floor that the solver proves under all plans
   */
  record Case(int number, int home, long momentHalfGMm, long optimumHalfGMm, double floorHalfGMm) {
    boolean optimal() {
      return home == 0 && momentHalfGMm <= optimumHalfGMm * 1.001;
    }

    /** By how much the moment is above the optimum, as a share of it; 1 if anything is home. */
    double gap() {
      return home > 0 ? 1.0 : (double) momentHalfGMm / optimumHalfGMm - 1.0;
    }

    double floorShare() {
      return floorHalfGMm / optimumHalfGMm;
    }

    boolean betterThanTheOptimum() {
      return home == 0 && momentHalfGMm < optimumHalfGMm;
    }

    boolean floorAboveTheOptimum() {
      return floorHalfGMm > optimumHalfGMm;
    }
  }

  private BoxWitness() {}

  /** Packs the boxes of a case and sets the plan beside the optimum, which is judged as well. */
  static Case solve(BoxCases.Proved proved, long steps) {
    BoxCase boxes = proved.boxes();
    Scenario scenario = scenario(boxes);
    LoadPlan best = planOf(scenario, boxes, proved.optimum());
    AssertedSearch.judged(scenario, best);
    LoadPlan found = search(scenario, proved.number(), steps);
    AssertedSearch.judged(scenario, found);
    return new Case(
        proved.number(),
        boxes.boxes().size() - found.placements().size(),
        moment(boxes, Loading.of(scenario, found)),
        proved.optimum().momentHalfGMm(),
        floor(Loading.of(scenario, best)));
  }

  private static long moment(BoxCase boxes, Loading loading) {
    long moment = 0L;
    for (PlacedItem item : loading.placed().values()) {
      BoxCase.Box box = boxes.boxes().get(numberOf(item.item().id()));
      int frontMm = item.space().box().minXMm();
      moment +=
          boxes.momentHalfGMm(box, item.box().minXMm() - frontMm, item.box().maxXMm() - frontMm);
    }
    return moment;
  }

  private static double floor(Loading loading) {
    Bound floor = Floor.of(loading, Floor.USUAL_ITERATIONS);
    return (floor.floorNm() - floor.fixedNm())
        / Lever.newtonMetres(1L, Lever.STANDARD_GRAVITY_M_S2);
  }

  private static String idOf(int box) {
    return "box-" + box;
  }

  private static int numberOf(String id) {
    return Integer.parseInt(id.substring(id.indexOf('-') + 1));
  }

  private static LoadPlan planOf(Scenario scenario, BoxCase boxes, BoxCase.Optimum optimum) {
    List<Placement> placements = new ArrayList<>();
    for (int i = 0; i < boxes.boxes().size(); i++) {
      BoxMm place = optimum.places().get(i);
      placements.add(
          new Placement(
              idOf(i),
              /* unit= */ 1,
              SPACE,
              /* shape= */ 0,
              turnOf(boxes.boxes().get(i), place),
              new SpacePointMm(place.minXMm(), place.minYMm(), place.minZMm())));
    }
    return new LoadPlan(scenario.id(), Map.of(), placements, LoadPlan.Origin.HAND);
  }

  private static Turn turnOf(BoxCase.Box box, BoxMm place) {
    SizeMm size = new SizeMm(place.lengthMm(), place.widthMm(), place.heightMm());
    return box.turns().stream()
        .filter(turn -> turn.applyTo(box.listed()).equals(size))
        .findFirst()
        .orElseThrow();
  }

  /** Starts from nothing with moments compared in tenths of a newton metre. */
  private static LoadPlan search(Scenario scenario, long seed, long steps) {
    LoadPlan.Origin finest =
        new LoadPlan.Origin(
            "hand", OptionalLong.empty(), OptionalLong.empty(), OptionalLong.of(1L));
    LoadPlan nothing = new LoadPlan(scenario.id(), Map.of(), List.of(), finest);
    PlanSearch.Request request = new PlanSearch.Request(scenario, seed, steps, 0.0, 1);
    return PlanSearch.solve(request.from(nothing), best -> {}, () -> false).plan();
  }

  private static Scenario scenario(BoxCase boxes) {
    RigBuilder rig =
        RigBuilder.aBareDualCab()
            .settings(OtherSettings.withSupportPermille(boxes.supportPermille()))
            .ute(ute -> ute.wheelbaseMm(WHEELBASE_MM))
            .person("driver", Masses.kg(80), "driver")
            .roadDay(10.0)
            .uteSpace(
                aSpace(SPACE, WHEELBASE_MM - boxes.axleMm(), -400, 2000, boxes.room())
                    .zone(Zone.CAB)
                    .environment(Environment.OPEN_AIR));
    for (int i = 0; i < boxes.boxes().size(); i++) {
      BoxCase.Box box = boxes.boxes().get(i);
      Turn[] turns = box.turns().toArray(new Turn[0]);
      rig.items(
          anItem(idOf(i))
              .size(box.listed().lengthMm(), box.listed().widthMm(), box.listed().heightMm())
              .massG(box.massG())
              .bearsG(Masses.kg(500))
              .turns(turns[0], turns));
    }
    return rig.scenario();
  }
}
