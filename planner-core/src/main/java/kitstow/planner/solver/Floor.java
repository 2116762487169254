package kitstow.planner.solver;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.LoadKind;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Settings;
import kitstow.planner.packing.Decoder;
import kitstow.planner.packing.Room;
import kitstow.planner.packing.SiteMap;
import kitstow.planner.packing.Wanted;
import kitstow.planner.statics.Bound;
import kitstow.planner.statics.Lever;
import kitstow.planner.statics.OverhangMoment;
import kitstow.planner.trip.Timeline;

/**
 * A floor under the worst moving rear overhang moment of every plan that places the same items with
 * the modules in the same bays: a priced relaxation (weak Lagrangean duality; A. M. Geoffrion,
 * Lagrangean relaxation for integer programming, 1974; from memory, proved in the worked examples).
 * Sections and mass limits get prices; each item then takes its cheapest place on its own. Any
 * prices give a true floor; good ones are sought by the volume algorithm (F. Barahona, R. Anbil,
 * 2000; from memory).
 */
public final class Floor {
  /** Iterations by default: about a second for 80 items in 25 spaces. */
  public static final int USUAL_ITERATIONS = 400;

  /** Taken off the floor for the rounding of its own sums, as a share of the moment. */
  private static final double ROUNDING = 1.0e-9;

  private static final double G_PER_KG = 1000.0;

  /** In so many of the iterations only the plain shares get prices, since many are slow to find. */
  private static final double PLAIN_SHARE = 0.25;

  private static final boolean[] FIRST = FloorFamily.used(EnumSet.noneOf(FloorFamily.Part.class));

  private final List<FloorSpace> spaces = new ArrayList<>();
  private final List<Crowd> crowds = new ArrayList<>();
  private final FloorLimits limits;
  private final Set<FloorFamily.Part> parts;

  /** A state, the moment in it, and the gear's part of that and its mass. */
  private record Worst(LoadState state, long halfGMm, long gearHalfGMm, double gearKg) {}

  /** The best floor found, kilogram millimetres of gear, and the prices that prove it. */
  private record Climbed(double kgMm, FloorPrices prices) {}

  /** Items that are alike: same ways to stand, same mass. */
  private record Crowd(int count, double massKg, List<FloorColumn> columns) {}

  private Floor(Loading loading, LoadState state, Set<FloorFamily.Part> parts) {
    this.parts = parts;
    RigView view = new RigView(loading.scenario(), loading.plan().moduleBays(), /* number= */ 0);
    SiteMap sites = view.sites();
    Decoder decoder = view.decoder();
    boolean keep = loading.scenario().settings().massLimits() == Settings.MassLimits.KEEP;
    this.limits =
        keep && parts.contains(FloorFamily.Part.LIMITS)
            ? FloorLimits.of(
                loading,
                state,
                new LimitShape(view, loading.scenario()).groupOf(state),
                sites.size())
            : FloorLimits.none(sites.size());
    for (int i = 0; i < sites.size(); i++) {
      BoxMm room = Room.of(sites.space(i));
      spaces.add(new FloorSpace(i, room, loading.scenario().ute().wheelbaseMm()));
    }
    Map<String, List<PlacedItem>> alike = new LinkedHashMap<>();
    for (PlacedItem item : loading.placed().values()) {
      long massG = state.massG(loading.indexOf(item.key()));
      alike.computeIfAbsent(item.item().id() + " " + massG, k -> new ArrayList<>()).add(item);
    }
    List<FloorSections.Group> groups = new ArrayList<>();
    List<Double> massesKg = new ArrayList<>();
    for (List<PlacedItem> group : alike.values()) {
      PlacedItem one = group.get(0);
      groups.add(new FloorSections.Group(Wanted.of(one.item(), one.unit()), group.size()));
      massesKg.add(state.massG(loading.indexOf(one.key())) / G_PER_KG);
    }
    FloorSections sections = new FloorSections(sites, decoder, groups);
    for (int i = 0; i < groups.size(); i++) {
      if (massesKg.get(i) > 0.0) {
        List<FloorColumn> columns = columns(decoder, sections, i, groups.get(i).wanted());
        crowds.add(new Crowd(groups.get(i).count(), massesKg.get(i), columns));
      }
    }
  }

  private List<FloorColumn> columns(
      Decoder decoder, FloorSections sections, int group, Wanted wanted) {
    boolean alone = wanted.item().bearsG() == 0L;
    boolean whole = parts.contains(FloorFamily.Part.WHOLE);
    List<FloorColumn> columns = new ArrayList<>();
    for (int site = 0; site < spaces.size(); site++) {
      FloorSpace space = spaces.get(site);
      for (int pose : decoder.posesIn(wanted, site)) {
        SizeMm size = wanted.poses().get(pose).size();
        SizeMm taken = whole ? sections.taken(group, site, size, space) : size;
        FloorColumn column = new FloorColumn(space, taken, alone);
        if (columns.stream().noneMatch(column::dominatedBy)) {
          columns.removeIf(old -> old.dominatedBy(column));
          columns.add(column);
        }
      }
    }
    return columns;
  }

  /**
   * Whether the floor counts on a rule being kept: it holds only for plans that keep it, and tells
   * nothing of one that does not.
   */
  public static boolean countsOn(RuleId rule, Settings settings) {
    return switch (rule.kind()) {
      case GEOMETRY, COMPANY -> true;
      case LIMIT -> settings.massLimits() == Settings.MassLimits.KEEP;
      case REACH -> Decoder.keepsOut(rule);
      case NEED, PREFERENCE -> false;
    };
  }

  /**
   * A floor under the moment of all plans that place what a plan places.
   *
   * @param loading the plan; it must keep the rules of place, and unless they are only reported the
   *     mass limits, for the floor to say anything about it
   * @param iterations rounds in which prices are sought; more mostly give a higher floor
   */
  public static Bound of(Loading loading, int iterations) {
    return of(loading, iterations, EnumSet.allOf(FloorFamily.Part.class));
  }

  /**
   * The same with only some of what makes it higher, to see what each is worth.
   *
   * @param parts what is used
   */
  static Bound of(Loading loading, int iterations, Set<FloorFamily.Part> parts) {
    Optional<Worst> found = worstOf(loading);
    if (!found.isPresent()) {
      return new Bound(0.0, 0.0, 0.0, 0.0);
    }
    Worst worst = found.get();
    double gravity = Lever.STANDARD_GRAVITY_M_S2;
    double momentNm = Lever.newtonMetres(worst.halfGMm(), gravity);
    double fixedNm = Lever.newtonMetres(worst.halfGMm() - worst.gearHalfGMm(), gravity);
    double gearKgMm = new Floor(loading, worst.state(), parts).climb(iterations, worst).kgMm();
    double floorNm = fixedNm + gearKgMm / 1000.0 * gravity - ROUNDING * momentNm;
    return new Bound(Math.max(0.0, floorNm), momentNm, fixedNm, worst.gearKg());
  }

  /**
   * What places cost where what a plan has aboard competes for them; nothing on a trip that goes
   * nowhere.
   *
   * @param iterations rounds in which prices are sought
   */
  static Optional<FloorGuide> guide(Loading loading, int iterations) {
    return worstOf(loading)
        .map(
            worst -> {
              Floor floor =
                  new Floor(loading, worst.state(), EnumSet.allOf(FloorFamily.Part.class));
              floor.climb(iterations, worst).prices().post();
              return new FloorGuide(floor.spaces, loading.scenario().ute().wheelbaseMm());
            });
  }

  /** The moving state with the largest moment, and the gear's part in it. */
  private static Optional<Worst> worstOf(Loading loading) {
    LoadState state = null;
    long halfGMm = -1L;
    for (LoadState one : Timeline.of(loading).states()) {
      if (one.kind() == LoadKind.MOVING && !one.noteOnly()) {
        long moment = OverhangMoment.of(loading, one).halfGMm();
        if (moment > halfGMm) {
          state = one;
          halfGMm = moment;
        }
      }
    }
    if (state == null) {
      return Optional.empty();
    }
    long gearHalfGMm = 0L;
    double gearKg = 0.0;
    for (PlacedItem item : loading.placed().values()) {
      long massG = state.massG(loading.indexOf(item.key()));
      gearKg += massG / G_PER_KG;
      gearHalfGMm +=
          Lever.overhangHalfGMm(
              massG,
              item.box().minXMm(),
              item.box().maxXMm(),
              loading.scenario().ute().wheelbaseMm());
    }
    return Optional.of(new Worst(state, halfGMm, gearHalfGMm, gearKg));
  }

  /**
   * Seeks good prices.
   *
   * @param worst what the gear has in the plan sets the length of the first steps
   */
  private Climbed climb(int iterations, Worst worst) {
    FloorPrices best = new FloorPrices(spaces, limits);
    FloorUse mean = new FloorUse(spaces);
    double bestValue = value(best, mean);
    double factor = 0.5;
    double least = 0.1 * worst.gearHalfGMm() / 2.0 / G_PER_KG;
    double target = Math.max(1.05 * bestValue, bestValue + least);
    int poor = 0;
    boolean[] all = FloorFamily.used(parts);
    for (int i = 1; i <= iterations; i++) {
      if (bestValue > 0.98 * target) {
        target = Math.max(1.05 * bestValue, bestValue + 0.1 * least);
      }
      boolean plain = i <= PLAIN_SHARE * iterations;
      FloorPrices next = best.step(mean, factor * (target - bestValue), plain ? FIRST : all);
      FloorUse now = new FloorUse(spaces);
      double value = value(next, now);
      mean.mix(now, Math.max(0.005, 0.1 * (1.0 - (double) i / iterations)));
      if (value > bestValue) {
        bestValue = value;
        best = next;
        factor = Math.min(2.0, factor * 1.1);
        poor = 0;
      } else if (++poor >= 15) {
        factor *= 0.7;
        poor = 0;
      }
    }
    return new Climbed(bestValue, best);
  }

  /** The floor at some prices; fills in what the cheapest places use. */
  private double value(FloorPrices prices, FloorUse use) {
    prices.post();
    double sum = -prices.capacityCost();
    double[] density = new double[FloorUse.mostSlices(spaces)];
    double[] sums = new double[density.length + 1];
    for (Crowd crowd : crowds) {
      FloorColumn cheapest = null;
      FloorColumn.Least least = new FloorColumn.Least(Double.POSITIVE_INFINITY, 0.0);
      for (FloorColumn column : crowd.columns()) {
        FloorColumn.Least one = column.least(crowd.massKg(), density, sums);
        if (one.cost() < least.cost()) {
          least = one;
          cheapest = column;
        }
      }
      if (cheapest != null) {
        sum += crowd.count() * least.cost();
        use.add(cheapest, least.atMm(), crowd.count(), crowd.massKg());
      }
    }
    return sum;
  }
}
