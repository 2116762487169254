package kitstow.planner.model;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The vehicle below and ahead of the tray. Points and boxes are in the vehicle frame.
 *
 * @param id catalogue id
 * @param title shown to people
 * @param source where its figures come from
 * @param wheelbaseMm front to rear axle centre
 * @param frontTrackMm between the front tyre centres
 * @param rearTrackMm between the rear tyre centres
 * @param empty empty axle loads with their basis
 * @param emptyHeightMm height of the empty ute's centre of mass above the ground
 * @param emptyHeightSource where that height comes from
 * @param limits ratings
 * @param frontTyres tyres of the front axle
 * @param rearTyres tyres of the rear axle
 * @param seats seats
 * @param fuelTanks fuel tanks that belong to the ute
 * @param ball where the tow ball is; absent without a tow bar
 * @param parts removable parts
 * @param springHangers where the rear springs hang on the frame, when known
 * @param foremostXMm foremost point of the ute itself, before the front axle and so below zero; not
 *     always known
 * @param rearmostXMm rearmost point of the ute itself
 * @param cabRoofZMm height of the cab roof above the ground
 * @param bays bays on the ute (the cab roof)
 * @param spaces spaces in the cab
 */
public record Ute(
    String id,
    String title,
    String source,
    int wheelbaseMm,
    int frontTrackMm,
    int rearTrackMm,
    EmptyAxleLoads empty,
    int emptyHeightMm,
    String emptyHeightSource,
    UteLimits limits,
    TyreSet frontTyres,
    TyreSet rearTyres,
    List<Seat> seats,
    List<Tank> fuelTanks,
    Optional<VehiclePointMm> ball,
    List<RemovablePart> parts,
    Optional<SpringHangers> springHangers,
    OptionalInt foremostXMm,
    int rearmostXMm,
    int cabRoofZMm,
    List<BaySpec> bays,
    List<SpaceSpec> spaces) {
  /** Copies its collections. */
  public Ute {
    seats = List.copyOf(seats);
    fuelTanks = List.copyOf(fuelTanks);
    parts = List.copyOf(parts);
    bays = List.copyOf(bays);
    spaces = List.copyOf(spaces);
  }

  /** The same ute weighed otherwise. */
  public Ute withEmpty(EmptyAxleLoads other) {
    return with(other, fuelTanks, parts);
  }

  /** The same ute with other fuel tanks, or tanks otherwise filled. */
  public Ute withFuelTanks(List<Tank> others) {
    return with(empty, others, parts);
  }

  /** The same ute with other parts on it, off it or stowed. */
  public Ute withParts(List<RemovablePart> others) {
    return with(empty, fuelTanks, others);
  }

  private Ute with(EmptyAxleLoads weighed, List<Tank> tanks, List<RemovablePart> removable) {
    return new Ute(
        id,
        title,
        source,
        wheelbaseMm,
        frontTrackMm,
        rearTrackMm,
        weighed,
        emptyHeightMm,
        emptyHeightSource,
        limits,
        frontTyres,
        rearTyres,
        seats,
        tanks,
        ball,
        removable,
        springHangers,
        foremostXMm,
        rearmostXMm,
        cabRoofZMm,
        bays,
        spaces);
  }

  /** Front and rear spring hanger, x in the vehicle frame. */
  public record SpringHangers(int frontXMm, int rearXMm) {}
}
