package kitstow.planner.testkit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import kitstow.planner.model.EmptyAxleLoads;
import kitstow.planner.model.RoofLimits;
import kitstow.planner.model.Seat;
import kitstow.planner.model.Tank;
import kitstow.planner.model.TyreSet;
import kitstow.planner.model.Ute;
import kitstow.planner.model.UteLimits;
import kitstow.planner.model.VehiclePointMm;

/**
 * A dual cab with a wheelbase of 3000 mm, 1000 kg on the empty front axle and 700 kg on the rear
 * one, two seats, a tow ball 1200 mm behind the rear axle and no fuel tank.
 */
public final class UteBuilder {
  /** Front to rear axle. */
  public static final int WHEELBASE_MM = 3000;

  private final List<Tank> fuelTanks = new ArrayList<>();
  private int wheelbaseMm = WHEELBASE_MM;
  private long gvmG = Masses.kg(3000);
  private long frontAxleG = Masses.kg(1500);
  private long rearAxleG = Masses.kg(2000);
  private OptionalLong gcmG = OptionalLong.of(Masses.kg(6000));
  private OptionalLong brakedTowingG = OptionalLong.of(Masses.kg(3500));
  private OptionalLong unbrakedTowingG = OptionalLong.of(Masses.kg(750));
  private OptionalLong ballG = OptionalLong.of(Masses.kg(350));
  private OptionalInt foremostXMm = OptionalInt.empty();
  private Optional<RoofLimits> cabRoof = Optional.of(new RoofLimits(Masses.kg(80), Masses.kg(200)));
  private long emptyFrontG = Masses.kg(1000);
  private long emptyRearG = Masses.kg(700);
  private long emptyToleranceG;
  private Set<String> weighedWith = Set.of();
  private TyreSet frontTyres = new TyreSet(/* loadIndex= */ 121, /* count= */ 2);
  private TyreSet rearTyres = new TyreSet(/* loadIndex= */ 121, /* count= */ 2);

  /** By how much each empty axle load may be off, and what was on the ute when it was weighed. */
  public UteBuilder weighed(long toleranceG, String... fitted) {
    emptyToleranceG = toleranceG;
    weighedWith = Set.of(fitted);
    return this;
  }

  /** Another distance from the front to the rear axle. */
  public UteBuilder wheelbaseMm(int value) {
    wheelbaseMm = value;
    return this;
  }

  /** Other empty axle loads. */
  public UteBuilder emptyG(long front, long rear) {
    emptyFrontG = front;
    emptyRearG = rear;
    return this;
  }

  /** Gross vehicle mass. */
  public UteBuilder gvmG(long value) {
    gvmG = value;
    return this;
  }

  /** Front axle limit. */
  public UteBuilder frontAxleG(long value) {
    frontAxleG = value;
    return this;
  }

  /** Rear axle limit. */
  public UteBuilder rearAxleG(long value) {
    rearAxleG = value;
    return this;
  }

  /** Gross combination mass. */
  public UteBuilder gcmG(long value) {
    gcmG = OptionalLong.of(value);
    return this;
  }

  /** Largest braked and unbraked trailer. */
  public UteBuilder towingG(long braked, long unbraked) {
    brakedTowingG = OptionalLong.of(braked);
    unbrakedTowingG = OptionalLong.of(unbraked);
    return this;
  }

  /** Largest ball mass. */
  public UteBuilder ballG(long value) {
    ballG = OptionalLong.of(value);
    return this;
  }

  /** No towing limit is known. */
  public UteBuilder withoutTowingLimits() {
    gcmG = OptionalLong.empty();
    brakedTowingG = OptionalLong.empty();
    unbrakedTowingG = OptionalLong.empty();
    ballG = OptionalLong.empty();
    return this;
  }

  /** Cab roof limits. */
  public UteBuilder cabRoofG(long moving, long parked) {
    cabRoof = Optional.of(new RoofLimits(moving, parked));
    return this;
  }

  /** No cab roof limit is known. */
  public UteBuilder withoutCabRoofLimits() {
    cabRoof = Optional.empty();
    return this;
  }

  /** Foremost point, below zero; at first it is not known. */
  public UteBuilder foremostXMm(int value) {
    foremostXMm = OptionalInt.of(value);
    return this;
  }

  /** Tyres of the front axle. */
  public UteBuilder frontTyres(int loadIndex, int count) {
    frontTyres = new TyreSet(loadIndex, count);
    return this;
  }

  /** Tyres of the rear axle. */
  public UteBuilder rearTyres(int loadIndex, int count) {
    rearTyres = new TyreSet(loadIndex, count);
    return this;
  }

  /** A fuel tank. */
  public UteBuilder fuelTank(Tank value) {
    fuelTanks.add(value);
    return this;
  }

  /** The ute. */
  public Ute build() {
    return new Ute(
        "ute",
        "Dual cab",
        /* source= */ "test",
        wheelbaseMm,
        /* frontTrackMm= */ 1550,
        /* rearTrackMm= */ 1550,
        new EmptyAxleLoads(
            Masses.weighed(emptyFrontG, emptyToleranceG),
            Masses.weighed(emptyRearG, emptyToleranceG),
            Map.of(),
            List.of(),
            weighedWith,
            "test",
            "2024"),
        /* emptyHeightMm= */ 700,
        /* emptyHeightSource= */ "test",
        new UteLimits(
            gvmG, frontAxleG, rearAxleG, gcmG, brakedTowingG, unbrakedTowingG, ballG, cabRoof),
        frontTyres,
        rearTyres,
        List.of(
            new Seat("driver", "Driver", new VehiclePointMm(1500, 400, 900)),
            new Seat("passenger", "Passenger", new VehiclePointMm(1500, -400, 900))),
        fuelTanks,
        Optional.of(new VehiclePointMm(4200, 0, 450)),
        /* parts= */ List.of(),
        /* springHangers= */ Optional.empty(),
        foremostXMm,
        /* rearmostXMm= */ 4100,
        /* cabRoofZMm= */ 1800,
        /* bays= */ List.of(),
        /* spaces= */ List.of());
  }
}
