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
import kitstow.planner.geometry.PointMm;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.geometry.Turn;
import kitstow.planner.model.Consumption;
import kitstow.planner.model.Content;
import kitstow.planner.model.Environment;
import kitstow.planner.model.Growth;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Placement;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.SpacePointMm;
import kitstow.planner.model.SupplyKind;
import kitstow.planner.model.SupplyOrder;
import kitstow.planner.model.Zone;
import kitstow.planner.statics.AxleLoads;
import kitstow.planner.statics.Bound;
import kitstow.planner.statics.Lever;
import kitstow.planner.testkit.ItemBuilder;
import kitstow.planner.testkit.Masses;
import kitstow.planner.testkit.OtherSettings;
import kitstow.planner.testkit.RigBuilder;
import kitstow.planner.testkit.SpaceBuilder;
import kitstow.planner.trip.Timeline;

/**
 * Boxes in few spaces, packed by the search, beside the proved optimum. The spaces are high above a
 * long ute with tray and canopy ahead of its rear axle, so that the boxes are all that lies behind
 * it and nothing but the rules of place binds them.
 */
final class BoxWitness {
  /** Less than a second for seven boxes. */
  static final long STEPS_OF_SEVEN = 5_000;

  /** About a second for eight boxes in three spaces. */
  static final long STEPS_OF_THREE_SPACES = 5_000;

  /** The least mean of floors as shares of the optima of boxes in three spaces. */
  static final double LEAST_FLOOR_SHARE = 0.85;

  /** A part of a second for four. */
  static final long STEPS_OF_FOUR = 2_000;

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
    long start = 0L;
    long end = 0L;
    for (PlacedItem item : loading.placed().values()) {
      BoxCase.Box box = boxes.boxes().get(numberOf(item.item().id()));
      int fromMm = item.box().minXMm() - WHEELBASE_MM + boxes.axleMm();
      int toMm = item.box().maxXMm() - WHEELBASE_MM + boxes.axleMm();
      start += boxes.momentHalfGMm(box.massG(), fromMm, toMm);
      end += boxes.momentHalfGMm(box.endG(), fromMm, toMm);
    }
    return Math.max(start, end);
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
      int space = spaceOf(boxes, place);
      PointMm corner = boxes.spaces().get(space).corner();
      placements.add(
          new Placement(
              idOf(i),
              /* unit= */ 1,
              idOfSpace(space),
              /* shape= */ 0,
              turnOf(boxes.boxes().get(i), place),
              new SpacePointMm(
                  place.minXMm() - corner.xMm(), place.minYMm() - corner.yMm(), place.minZMm())));
    }
    return new LoadPlan(scenario.id(), Map.of(), placements, LoadPlan.Origin.HAND);
  }

  private static String idOfSpace(int space) {
    return "space-" + space;
  }

  private static int spaceOf(BoxCase boxes, BoxMm place) {
    for (int k = 0; k < boxes.spaces().size(); k++) {
      if (boxes.spaces().get(k).holds(place)) {
        return k;
      }
    }
    throw new IllegalStateException("in no space: " + place);
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
    RigBuilder rig = rig(boxes);
    if (boxes.mostFrontHalfGMm() < Long.MAX_VALUE) {
      long frontG = frontG(rig.scenario(), boxes.mostFrontHalfGMm());
      rig.ute(ute -> ute.frontAxleG(frontG));
    }
    return rig.scenario();
  }

  private static RigBuilder rig(BoxCase boxes) {
    RigBuilder rig =
        RigBuilder.aBareDualCab()
            .settings(OtherSettings.withSupportPermille(boxes.supportPermille()))
            .ute(ute -> ute.wheelbaseMm(WHEELBASE_MM))
            .person("driver", Masses.kg(80), "driver")
            .roadDay(10.0);
    for (int k = 0; k < boxes.spaces().size(); k++) {
      rig.uteSpace(space(boxes, k));
    }
    for (int i = 0; i < boxes.boxes().size(); i++) {
      rig.items(item(boxes.boxes().get(i), idOf(i)));
    }
    long usedG =
        boxes.boxes().stream().mapToLong(box -> Math.max(0L, box.massG() - box.endG())).sum();
    if (usedG > 0L) {
      // One person drinks all of it in the one day; only the first box is ever used up.
      rig.using(
          new Consumption(0L, 1000, 1000, /* waterMlPerPersonDay= */ usedG, 0L, 0L),
          new SupplyOrder(SupplyKind.WATER, List.of(List.of(idOf(0))), SupplyOrder.Decant.EARLY));
    }
    return rig;
  }

  private static SpaceBuilder space(BoxCase boxes, int number) {
    BoxCase.Space space = boxes.spaces().get(number);
    SpaceBuilder built =
        aSpace(
                idOfSpace(number),
                WHEELBASE_MM - boxes.axleMm() + space.corner().xMm(),
                space.corner().yMm() - 400,
                2000,
                space.size())
            .zone(Zone.CAB)
            .environment(Environment.OPEN_AIR);
    return space.ratingG() < Long.MAX_VALUE ? built.ratings(Masses.always(space.ratingG())) : built;
  }

  private static ItemBuilder item(BoxCase.Box box, String id) {
    Turn[] turns = box.turns().toArray(new Turn[0]);
    ItemBuilder item =
        anItem(id)
            .size(box.listed().lengthMm(), box.listed().widthMm(), box.listed().heightMm())
            .massG(box.massG())
            .bearsG(Masses.kg(500))
            .turns(turns[0], turns);
    long gainG = box.endG() - box.massG();
    if (gainG < 0L) {
      item.content(new Content(SupplyKind.WATER, -gainG));
    } else if (gainG > 0L) {
      item.growth(new Growth(/* perPersonDayG= */ gainG, /* upToG= */ gainG, /* wetG= */ 0L));
    }
    return item;
  }

  /** The front axle limit that leaves so much lever for the boxes, in whole grams. */
  private static long frontG(Scenario scenario, long halfGMm) {
    Loading empty =
        Loading.of(
            scenario, new LoadPlan(scenario.id(), Map.of(), List.of(), LoadPlan.Origin.HAND));
    AxleLoads axles = AxleLoads.of(empty, Timeline.of(empty).states().get(0));
    long emptyHalfGMm = 2L * WHEELBASE_MM * axles.totalG() - axles.rearHalfGMm();
    return (emptyHalfGMm + halfGMm) / (2L * WHEELBASE_MM);
  }
}
