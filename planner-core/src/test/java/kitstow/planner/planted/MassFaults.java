package kitstow.planner.planted;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import kitstow.planner.model.Body;
import kitstow.planner.model.FittedModule;
import kitstow.planner.model.LoadKind;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Ratings;
import kitstow.planner.model.RoofBars;
import kitstow.planner.model.RoofLimits;
import kitstow.planner.model.Space;
import kitstow.planner.model.Surface;
import kitstow.planner.model.UteLimits;
import kitstow.planner.model.Zone;

/** Faults of mass: a rating turns out to be one gram less than the load. */
final class MassFaults {
  private MassFaults() {}

  /** A space or slide is rated one gram below its heaviest moment, which only one state has. */
  static List<Planted> rating(SoundPlan plan, Random random) {
    List<Planted> planted = new ArrayList<>();
    Loading loading = plan.loading();
    for (String space : List.of("box", "shelf")) {
      long worst = worstInOneState(plan, body -> body.spaceId().filter(space::equals).isPresent());
      if (worst > 0L) {
        planted.add(
            new Planted(
                plan.with(Edit.spaceRatings(plan.scenario(), space, moving(worst - 1L))),
                Set.of("SPACE_RATING " + space)));
      }
    }
    for (String slide : loading.rig().modules().keySet()) {
      long worst = worstInOneState(plan, body -> body.movesWith().contains(slide));
      if (worst > 0L) {
        planted.add(
            new Planted(
                plan.with(Edit.slideRatings(plan.scenario(), slide, moving(worst - 1L))),
                Set.of("SLIDE_RATING " + slide)));
      }
    }
    return planted;
  }

  /** A bay on a drawer is rated one gram below all that stands in it. */
  static List<Planted> bay(SoundPlan plan, Random random) {
    List<Planted> planted = new ArrayList<>();
    for (FittedModule fitted : plan.loading().rig().modules().values()) {
      String bay = fitted.bay().id();
      int slash = bay.indexOf('/');
      String inside = fitted.module().id();
      double worst =
          worst(plan, Surface.ROAD, body -> body.inModules().contains(inside) ? 1.0 : 0.0);
      if (slash > 0) {
        planted.add(
            new Planted(
                plan.with(
                    Edit.bayRatings(
                        plan.scenario(),
                        bay.substring(0, slash),
                        bay.substring(slash + 1),
                        moving(Math.round(worst) - 1L))),
                Set.of("BAY_RATING " + bay)));
      }
    }
    return planted;
  }

  /** Off the road, the canopy roof takes one gram less than lies on it. */
  static List<Planted> canopyRoof(SoundPlan plan, Random random) {
    long load =
        Math.round(
            worst(
                plan,
                Surface.OFF_ROAD,
                body -> body.zone().equals(Optional.of(Zone.CANOPY_ROOF)) ? 1.0 : 0.0));
    if (load == 0L) {
      return List.of();
    }
    int permille = plan.scenario().settings().offRoadRoofPermille();
    long movingG = ((load - 1L) * 1000L + permille - 1L) / permille;
    return List.of(
        new Planted(
            plan.with(Edit.canopyRoof(plan.scenario(), new RoofLimits(movingG, 1_000_000L))),
            Set.of("CANOPY_ROOF_LIMIT canopy-roof")));
  }

  /**
   * A bar is rated a gram or two below what the lever rule puts on it; half a gram is forgiven
   * where shares are rounded.
   */
  static List<Planted> bar(SoundPlan plan, Random random) {
    List<Planted> planted = new ArrayList<>();
    for (Space space : plan.loading().rig().spaces().values()) {
      for (RoofBars.Bar bar : space.bars().map(RoofBars::bars).orElse(List.of())) {
        double worst = worst(plan, Surface.ROAD, body -> barShare(body, space, bar));
        if (worst > 2.0) {
          long rating = (long) Math.floor(worst - 0.75);
          planted.add(
              new Planted(
                  plan.with(Edit.barRatings(plan.scenario(), space.id(), bar.id(), moving(rating))),
                  Set.of("BAR_LIMIT " + space.id() + ":" + bar.id())));
        }
      }
    }
    return planted;
  }

  /** Share of a thing that a bar carries: falls evenly from 1 at the bar to 0 at the next one. */
  private static double barShare(Body body, Space space, RoofBars.Bar bar) {
    if (!body.spaceId().equals(Optional.of(space.id()))) {
      return 0.0;
    }
    RoofBars bars = space.bars().orElseThrow();
    double centre = (body.box().minXMm() + body.box().maxXMm()) / 2.0 - space.box().minXMm();
    double next = Double.POSITIVE_INFINITY;
    double away = Math.abs(centre - bar.fromFrontMm());
    boolean carries = false;
    for (RoofBars.Bar other : bars.bars()) {
      int x = space.box().minXMm() + other.fromFrontMm();
      boolean beneath =
          bars.platformFloor() || (body.box().minXMm() <= x && x <= body.box().maxXMm());
      boolean sameSide = (other.fromFrontMm() > bar.fromFrontMm()) == (centre > bar.fromFrontMm());
      if (beneath && other.id().equals(bar.id())) {
        carries = true;
      } else if (beneath && sameSide) {
        next = Math.min(next, Math.abs(other.fromFrontMm() - bar.fromFrontMm()));
      }
    }
    if (!carries) {
      return 0.0;
    }
    return next == Double.POSITIVE_INFINITY ? 1.0 : Math.max(0.0, 1.0 - away / next);
  }

  /** The largest load while moving on a surface, each body counted by its weight. */
  private static double worst(SoundPlan plan, Surface surface, ToDoubleFunction<Body> weight) {
    List<Body> bodies = plan.loading().bodies();
    double worst = 0.0;
    for (LoadState state : plan.judgedStates()) {
      if (state.kind() == LoadKind.MOVING && state.surface() == surface) {
        double sum = 0.0;
        for (int i = 0; i < state.size(); i++) {
          sum += weight.applyAsDouble(bodies.get(i)) * state.massG(i);
        }
        worst = Math.max(worst, sum);
      }
    }
    return worst;
  }

  /** Rated so on the road; plenty off it and when parked. */
  private static Ratings moving(long roadG) {
    return new Ratings(1_000_000L, roadG, 1_000_000L, /* derived= */ false);
  }

  /** The largest road load, if only one state reaches it; 0 if several do. */
  private static long worstInOneState(SoundPlan plan, java.util.function.Predicate<Body> counted) {
    Loading loading = plan.loading();
    long worst = 0L;
    int reached = 0;
    for (LoadState state : plan.judgedStates()) {
      if (state.kind() != LoadKind.MOVING || state.surface() != Surface.ROAD) {
        continue;
      }
      long sum = 0L;
      for (int i = 0; i < state.size(); i++) {
        sum += counted.test(loading.bodies().get(i)) ? state.massG(i) : 0L;
      }
      if (sum > worst) {
        worst = sum;
        reached = 1;
      } else if (sum == worst) {
        reached++;
      }
    }
    return reached == 1 ? worst : 0L;
  }

  /** An axle, or the whole ute, is rated at most one gram below its heaviest moment. */
  static List<Planted> axle(SoundPlan plan, Random random) {
    long rear = ceilingOfWorst(plan, 1) - 1L;
    long front = ceilingOfWorst(plan, 2) - 1L;
    long total = ceilingOfWorst(plan, 0) - 1L;
    return List.of(
        new Planted(
            plan.with(Edit.limits(plan.scenario(), l -> limits(l, l.gvmG(), l.frontAxleG(), rear))),
            Set.of("REAR_AXLE_LIMIT rear-axle")),
        new Planted(
            plan.with(Edit.limits(plan.scenario(), l -> limits(l, l.gvmG(), front, l.rearAxleG()))),
            Set.of("FRONT_AXLE_LIMIT front-axle")),
        new Planted(
            plan.with(
                Edit.limits(plan.scenario(), l -> limits(l, total, l.frontAxleG(), l.rearAxleG()))),
            Set.of("GVM_LIMIT ute")));
  }

  /** The same plan with all three limits exactly at its heaviest moments: sound. */
  static SoundPlan atTheLimit(SoundPlan plan) {
    long rear = ceilingOfWorst(plan, 1);
    long front = ceilingOfWorst(plan, 2);
    long total = ceilingOfWorst(plan, 0);
    return plan.with(Edit.limits(plan.scenario(), l -> limits(l, total, front, rear)));
  }

  /** Heaviest moving load in whole grams, rounded up: 0 total, 1 rear axle, 2 front axle. */
  private static long ceilingOfWorst(SoundPlan plan, int which) {
    Loading loading = plan.loading();
    BigInteger twice = BigInteger.valueOf(2L * plan.scenario().ute().wheelbaseMm());
    long worst = Long.MIN_VALUE;
    for (LoadState state : plan.judgedStates()) {
      if (state.kind() != LoadKind.MOVING) {
        continue;
      }
      BigInteger total = BigInteger.ZERO;
      BigInteger rear = BigInteger.ZERO;
      for (int i = 0; i < state.size(); i++) {
        Body body = loading.bodies().get(i);
        long centre = body.box().minXMm() + body.box().maxXMm() + 2L * state.shift(i).xMm();
        BigInteger mass = BigInteger.valueOf(state.massG(i));
        total = total.add(mass.multiply(twice));
        rear = rear.add(mass.multiply(BigInteger.valueOf(centre)));
      }
      BigInteger load = which == 0 ? total : which == 1 ? rear : total.subtract(rear);
      long ceiling = load.add(twice).subtract(BigInteger.ONE).divide(twice).longValueExact();
      worst = Math.max(worst, ceiling);
    }
    return worst;
  }

  private static UteLimits limits(UteLimits l, long gvmG, long frontG, long rearG) {
    return new UteLimits(
        gvmG,
        frontG,
        rearG,
        l.gcmG(),
        l.brakedTowingG(),
        l.unbrakedTowingG(),
        l.ballG(),
        l.cabRoof());
  }
}
