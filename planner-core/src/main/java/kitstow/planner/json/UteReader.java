package kitstow.planner.json;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import kitstow.planner.model.BaySpec;
import kitstow.planner.model.EmptyAxleLoads;
import kitstow.planner.model.PartState;
import kitstow.planner.model.RemovablePart;
import kitstow.planner.model.Seat;
import kitstow.planner.model.SpaceSpec;
import kitstow.planner.model.Tank;
import kitstow.planner.model.TyreSet;
import kitstow.planner.model.Ute;
import kitstow.planner.model.UteLimits;
import kitstow.planner.model.VehiclePointMm;
import kitstow.planner.problem.Code;

/** Reads the utes of a catalogue; their removable parts are on. */
final class UteReader {
  private final Figures figures;
  private final Faults faults;

  UteReader(Figures figures, Faults faults) {
    this.figures = figures;
    this.faults = faults;
  }

  Ute read(Fields fields) {
    String id = fields.id("id");
    String title = fields.text("title", "name it as it shall be shown");
    String source = fields.text("source", "name where the figures come from");
    int wheelbaseMm = fields.whole("wheelbaseMm", Measure.SIZE);
    int frontTrackMm = fields.whole("frontTrackMm", Measure.SIZE);
    int rearTrackMm = fields.whole("rearTrackMm", Measure.SIZE);
    int emptyHeightMm = fields.whole("emptyHeightMm", Measure.SIZE);
    String emptyHeightSource = fields.text("emptyHeightSource", "name where the height comes from");
    UteLimits limits = limits(fields.object("limits", "give the ratings on the plate"));
    TyreSet frontTyres = tyres(fields, "frontTyres");
    TyreSet rearTyres = tyres(fields, "rearTyres");
    Names seatIds = new Names(faults, "seats of the ute");
    List<Seat> seats = seats(fields, seatIds);
    Names tankIds = new Names(faults, "tanks of the ute");
    BodyKeys keys = new BodyKeys(faults);
    List<Tank> tanks =
        new TankReader(
                figures,
                (tankId, place) -> {
                  tankIds.claim(tankId, place);
                  keys.claim(tankId, place);
                  keys.claimLiquid(tankId, place);
                })
            .tanks(
                fields.objects("fuelTanks", /* least= */ 1, "list the fuel tanks"),
                BoxFields::hostBox);
    EmptyAxleLoads empty =
        new EmptyReader(figures, faults)
            .read(fields.object("empty", "give the empty axle loads"), tanks, tankIds, seatIds);
    Optional<VehiclePointMm> ball = BoxFields.vehiclePointIfGiven(fields, "ballMm");
    List<RemovablePart> parts = parts(fields, keys);
    Optional<Ute.SpringHangers> hangers =
        fields.objectIfGiven("springHangers").map(UteReader::hangers);
    OptionalInt foremostXMm = fields.wholeIfGiven("foremostXMm", Measure.FRONT);
    int rearmostXMm = fields.whole("rearmostXMm", Measure.COORDINATE);
    int cabRoofZMm = fields.whole("cabRoofZMm", Measure.SIZE);
    RegionReader regions =
        new RegionReader(
            figures, new Names(faults, "bays and spaces of the ute"), RegionCheck.NONE);
    List<BaySpec> bays = regions.bays(fields);
    List<SpaceSpec> spaces = regions.spaces(fields);
    fields.done();
    return new Ute(
        id,
        title,
        source,
        wheelbaseMm,
        frontTrackMm,
        rearTrackMm,
        empty,
        emptyHeightMm,
        emptyHeightSource,
        limits,
        frontTyres,
        rearTyres,
        seats,
        tanks,
        ball,
        parts,
        hangers,
        foremostXMm,
        rearmostXMm,
        cabRoofZMm,
        bays,
        spaces);
  }

  private static UteLimits limits(Fields fields) {
    UteLimits limits =
        new UteLimits(
            fields.number("gvmKg", Measure.VEHICLE_LIMIT),
            fields.number("frontAxleKg", Measure.VEHICLE_LIMIT),
            fields.number("rearAxleKg", Measure.VEHICLE_LIMIT),
            fields.numberIfGiven("gcmKg", Measure.VEHICLE_LIMIT),
            fields.numberIfGiven("brakedTowingKg", Measure.VEHICLE_LIMIT),
            fields.numberIfGiven("unbrakedTowingKg", Measure.VEHICLE_LIMIT),
            fields.numberIfGiven("ballKg", Measure.VEHICLE_LIMIT),
            Figures.roofIfGiven(fields, "cabRoof"));
    fields.done();
    return limits;
  }

  private static TyreSet tyres(Fields ute, String key) {
    Fields fields = ute.object(key, "give {\"loadIndex\": 113, \"count\": 2}");
    int loadIndex = fields.whole("loadIndex", Measure.LOAD_INDEX);
    int count = fields.whole("count", Measure.TYRE_COUNT);
    if (count == 3) {
      fields.error(Code.OUT_OF_RANGE, "count", "is 3, must be 2 or 4", Measure.TYRE_COUNT.hint());
    }
    fields.done();
    return new TyreSet(loadIndex, count);
  }

  private static List<Seat> seats(Fields ute, Names seatIds) {
    List<Seat> seats = new ArrayList<>();
    for (Fields fields : ute.objects("seats", /* least= */ 1, "list the seats")) {
      String id = fields.id("id");
      seatIds.claim(id, fields.place("id"));
      seats.add(
          new Seat(
              id,
              fields.text("title", "name it as it shall be shown"),
              BoxFields.vehiclePoint(fields, "placeMm")));
      fields.done();
    }
    return seats;
  }

  private List<RemovablePart> parts(Fields ute, BodyKeys keys) {
    List<RemovablePart> parts = new ArrayList<>();
    for (Fields fields : ute.objectsIfGiven("parts")) {
      String id = fields.id("id");
      keys.claim(id, fields.place("id"));
      parts.add(
          new RemovablePart(
              id,
              fields.text("title", "name it as it shall be shown"),
              figures.mass(fields, Measure.MASS),
              BoxFields.vehicleBox(fields),
              PartState.ON,
              Optional.empty()));
      fields.done();
    }
    return parts;
  }

  private static Ute.SpringHangers hangers(Fields fields) {
    Ute.SpringHangers hangers =
        new Ute.SpringHangers(
            fields.whole("frontXMm", Measure.COORDINATE),
            fields.whole("rearXMm", Measure.COORDINATE));
    if (fields.good("frontXMm", "rearXMm") && hangers.rearXMm() <= hangers.frontXMm()) {
      fields.error(
          Code.ENDS_OUT_OF_ORDER,
          "rearXMm",
          "is "
              + hangers.rearXMm()
              + " mm, must be behind the front hanger at "
              + hangers.frontXMm()
              + " mm",
          "x runs rearward from the front axle");
    }
    fields.done();
    return hangers;
  }
}
