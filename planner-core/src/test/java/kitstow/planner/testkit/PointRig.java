package kitstow.planner.testkit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.model.Accessory;
import kitstow.planner.model.Consumption;
import kitstow.planner.model.EmptyAxleLoads;
import kitstow.planner.model.KnownMass;
import kitstow.planner.model.Leg;
import kitstow.planner.model.LoadKind;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.MassSource;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.Settings;
import kitstow.planner.model.ShiftMm;
import kitstow.planner.model.Surface;
import kitstow.planner.model.Trailer;
import kitstow.planner.model.Trip;
import kitstow.planner.model.TyreSet;
import kitstow.planner.model.Ute;
import kitstow.planner.model.UteLimits;
import kitstow.planner.model.VehiclePointMm;

/**
 * A ute of two axles and loose masses, to carry published lever examples through the planner's own
 * bodies, states and sums. Units of the examples may be anything: one mass unit is a gram, one
 * length unit a millimetre.
 */
public final class PointRig {
  private final int wheelbaseMm;
  private final List<Accessory> masses = new ArrayList<>();
  private long frontG;
  private long rearG;
  private Optional<VehiclePointMm> ball = Optional.empty();
  private final List<Trailer> trailers = new ArrayList<>();

  private PointRig(int wheelbaseMm) {
    this.wheelbaseMm = wheelbaseMm;
  }

  /** A weightless ute. */
  public static PointRig wheelbase(int wheelbaseMm) {
    return new PointRig(wheelbaseMm);
  }

  /** Empty axle loads. */
  public PointRig empty(long emptyFrontG, long emptyRearG) {
    frontG = emptyFrontG;
    rearG = emptyRearG;
    return this;
  }

  /** A point mass at x behind the front axle. */
  public PointRig at(String id, long massG, int xMm) {
    return spread(id, massG, xMm, xMm);
  }

  /** A mass spread evenly between two x. */
  public PointRig spread(String id, long massG, int minXMm, int maxXMm) {
    masses.add(
        new Accessory(
            id,
            id,
            id,
            "test",
            new KnownMass(massG, MassSource.WEIGHED, 0L),
            new BoxMm(minXMm, 0, 0, maxXMm, 0, 0),
            Optional.empty()));
    return this;
  }

  /** A trailer on a ball at x behind the front axle. */
  public PointRig trailer(long totalG, long ballG, int ballXMm) {
    ball = Optional.of(new VehiclePointMm(ballXMm, 0, 0));
    trailers.add(
        new Trailer(
            "trailer",
            "trailer",
            new KnownMass(totalG, MassSource.WEIGHED, 0L),
            new KnownMass(ballG, MassSource.WEIGHED, 0L),
            /* braked= */ true));
    return this;
  }

  /** The masses as a loading. */
  public Loading loading() {
    Ute ute =
        new Ute(
            "ute",
            "ute",
            "test",
            wheelbaseMm,
            1500,
            1500,
            new EmptyAxleLoads(
                new KnownMass(frontG, MassSource.WEIGHED, 0L),
                new KnownMass(rearG, MassSource.WEIGHED, 0L),
                Map.of(),
                List.of(),
                Set.of(),
                "test",
                "test"),
            0,
            "test",
            new UteLimits(
                Long.MAX_VALUE / 1_000_000_000L,
                Long.MAX_VALUE / 1_000_000_000L,
                Long.MAX_VALUE / 1_000_000_000L,
                OptionalLong.of(9_000_000L),
                OptionalLong.empty(),
                OptionalLong.empty(),
                OptionalLong.empty(),
                Optional.empty()),
            new TyreSet(0, 2),
            new TyreSet(0, 2),
            List.of(),
            List.of(),
            ball,
            List.of(),
            Optional.empty(),
            OptionalInt.empty(),
            wheelbaseMm,
            0,
            List.of(),
            List.of());
    Scenario scenario =
        new Scenario(
            "points",
            "points",
            "worked example",
            Settings.DEFAULTS,
            ute,
            Optional.empty(),
            Optional.empty(),
            masses,
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            trailers,
            new Trip(
                List.of(),
                List.of(
                    new Leg(
                        "leg",
                        "leg",
                        1.0,
                        1.0,
                        Surface.ROAD,
                        trailers.isEmpty() ? Optional.empty() : Optional.of("trailer"),
                        /* wet= */ false,
                        List.of(),
                        /* emptyRubbish= */ false)),
                new Consumption(0L, 1000, 1000, 0L, 0L, 0L),
                List.of()));
    return Loading.of(scenario, new LoadPlan("points", Map.of(), List.of(), LoadPlan.Origin.HAND));
  }

  /** A moving state in which every body has its full mass in its place. */
  public static LoadState full(Loading loading) {
    long[] massG = new long[loading.bodies().size()];
    for (int i = 0; i < massG.length; i++) {
      massG[i] = loading.bodies().get(i).nominalG();
    }
    return new LoadState(
        "full",
        "full",
        LoadKind.MOVING,
        Surface.ROAD,
        loading.scenario().trailers().isEmpty() ? Optional.empty() : Optional.of("trailer"),
        Optional.of("leg"),
        Set.of(),
        /* noteOnly= */ false,
        massG,
        Collections.nCopies(massG.length, ShiftMm.NONE));
  }
}
