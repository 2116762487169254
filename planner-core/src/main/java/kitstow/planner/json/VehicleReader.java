package kitstow.planner.json;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.PointMm;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.Accessory;
import kitstow.planner.model.Canopy;
import kitstow.planner.model.SpacePointMm;
import kitstow.planner.model.Tray;
import kitstow.planner.model.Zone;
import kitstow.planner.problem.Code;

/** Reads which tray and canopy a scenario fits, where, and its accessories. */
final class VehicleReader {
  private final Figures figures;
  private final Faults faults;
  private final Shelves shelves;
  private final Known known;

  private HostRegions trayRegions = HostRegions.NONE;
  private HostRegions canopyRegions = HostRegions.NONE;
  private boolean trayNamed;
  private boolean canopyNamed;

  VehicleReader(Figures figures, Faults faults, Shelves shelves, Known known) {
    this.figures = figures;
    this.faults = faults;
    this.shelves = shelves;
    this.known = known;
  }

  /** The tray, if one is named and known. */
  Optional<Tray> tray(Fields scenario) {
    trayNamed = scenario.has("tray");
    Optional<Fields> given = scenario.objectIfGiven("tray");
    if (!given.isPresent()) {
      return Optional.empty();
    }
    Fields fields = given.get();
    Optional<Tray> entry = shelves.trays().named(fields);
    int frontXMm = fields.whole("frontXMm", Measure.COORDINATE);
    int deckZMm = fields.whole("deckZMm", Measure.SIZE);
    trayRegions =
        HostRegions.read(
            fields,
            figures,
            RegionCheck.NONE,
            known,
            entry
                .map(tray -> new HostRegions(tray.bays(), tray.spaces()))
                .orElse(HostRegions.NONE));
    fields.doneBesideEntry("trays");
    if (!shelves.trays().idsKnown(fields, "bays", "spaces")) {
      known.regionsIncomplete();
    }
    return entry.map(
        tray ->
            new Tray(
                tray.id(),
                tray.title(),
                tray.source(),
                tray.size(),
                tray.mass(),
                tray.rating(),
                tray.headboardHeightMm(),
                tray.bays(),
                tray.spaces(),
                frontXMm,
                deckZMm));
  }

  /** The canopy, if one is named and known. */
  Optional<Canopy> canopy(Fields scenario) {
    canopyNamed = scenario.has("canopy");
    Optional<Fields> given = scenario.objectIfGiven("canopy");
    if (!given.isPresent()) {
      return Optional.empty();
    }
    Fields fields = given.get();
    if (!trayNamed) {
      faults.error(
          Code.CANOPY_WITHOUT_TRAY,
          fields.place(),
          "is a canopy without a tray, must stand on one",
          "add \"tray\", or take the canopy out");
    }
    Optional<Canopy> entry = shelves.canopies().named(fields);
    int fromTrayFrontMm = fields.whole("fromTrayFrontMm", Measure.COORDINATE);
    entry.ifPresent(canopy -> canopy.doors().forEach(door -> known.doors.add(door.id())));
    canopyRegions =
        HostRegions.read(
            fields,
            figures,
            entry.map(canopy -> RegionCheck.canopy(canopy.inside())).orElse(RegionCheck.NONE),
            known,
            entry
                .map(canopy -> new HostRegions(canopy.bays(), canopy.spaces()))
                .orElse(HostRegions.NONE));
    fields.doneBesideEntry("canopies");
    if (!shelves.canopies().idsKnown(fields, "bays", "spaces")) {
      known.regionsIncomplete();
    }
    if (!shelves.canopies().idsKnown(fields, "doors")) {
      known.doors.incomplete();
    }
    return entry.map(
        canopy ->
            new Canopy(
                canopy.id(),
                canopy.title(),
                canopy.source(),
                canopy.size(),
                canopy.mass(),
                canopy.inside(),
                canopy.doors(),
                canopy.roof(),
                canopy.liftOffLegs(),
                canopy.bays(),
                canopy.spaces(),
                fromTrayFrontMm));
  }

  /** Bays and spaces added to the tray. */
  HostRegions trayRegions() {
    return trayRegions;
  }

  /** Bays and spaces added to the canopy. */
  HostRegions canopyRegions() {
    return canopyRegions;
  }

  /** Accessories, in the vehicle frame. */
  List<Accessory> accessories(Fields scenario, Optional<Tray> tray, Optional<Canopy> canopy) {
    List<Accessory> accessories = new ArrayList<>();
    int trayX = tray.map(Tray::frontXMm).orElse(0);
    int deckZ = tray.map(Tray::deckZMm).orElse(0);
    int canopyX = trayX + canopy.map(Canopy::fromTrayFrontMm).orElse(0);
    for (Fields fields : scenario.objectsIfGiven("accessories")) {
      String id = fields.id("id");
      known.keys.claim(id, fields.place("id"));
      Optional<Accessory> entry = shelves.accessories().named(fields);
      Carrier on = fields.word("on", Carrier.WORDS);
      SpacePointMm corner = BoxFields.spaceCorner(fields);
      Optional<Zone> roof = fields.wordIfGiven("roof", Words.ROOF);
      fields.doneBesideEntry("accessories");
      checkFitted(fields, "on", on == Carrier.TRAY && !trayNamed, "tray");
      checkFitted(fields, "on", on == Carrier.CANOPY && !canopyNamed, "canopy");
      checkRoof(fields, "roof", roof);
      PointMm at =
          switch (on) {
            case VEHICLE -> new PointMm(corner.xMm(), corner.yMm(), corner.zMm());
            case TRAY -> new PointMm(trayX + corner.xMm(), corner.yMm(), deckZ + corner.zMm());
            case CANOPY -> new PointMm(canopyX + corner.xMm(), corner.yMm(), deckZ + corner.zMm());
          };
      entry.ifPresent(
          accessory ->
              accessories.add(
                  new Accessory(
                      id,
                      accessory.title(),
                      accessory.entryId(),
                      accessory.source(),
                      accessory.mass(),
                      BoxMm.at(at, sizeOf(accessory.box())),
                      roof)));
    }
    return accessories;
  }

  private static SizeMm sizeOf(BoxMm box) {
    return new SizeMm(
        box.maxXMm() - box.minXMm(), box.maxYMm() - box.minYMm(), box.maxZMm() - box.minZMm());
  }

  /** Notes a canopy roof that is named without a canopy. */
  void checkRoof(Fields fields, String key, Optional<Zone> roof) {
    boolean missing = roof.isPresent() && roof.get() == Zone.CANOPY_ROOF && !canopyNamed;
    checkFitted(fields, key, missing, "canopy");
  }

  private static void checkFitted(Fields fields, String key, boolean missing, String what) {
    if (missing && fields.good(key)) {
      fields.error(
          Code.NOT_FITTED,
          key,
          "needs a " + what + ", which is not fitted",
          "add \"" + what + "\", or choose another place");
    }
  }
}
