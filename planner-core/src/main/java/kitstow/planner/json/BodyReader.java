package kitstow.planner.json;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.BaySpec;
import kitstow.planner.model.Canopy;
import kitstow.planner.model.Door;
import kitstow.planner.model.Facing;
import kitstow.planner.model.KnownMass;
import kitstow.planner.model.LocalBoxMm;
import kitstow.planner.model.Ratings;
import kitstow.planner.model.RoofLimits;
import kitstow.planner.model.SpaceSpec;
import kitstow.planner.model.Tray;
import kitstow.planner.problem.Code;

/** Reads the trays and canopies of a catalogue; they stand at the origin until they are fitted. */
final class BodyReader {
  private final Figures figures;
  private final Faults faults;

  BodyReader(Figures figures, Faults faults) {
    this.figures = figures;
    this.faults = faults;
  }

  Tray tray(Fields fields) {
    String id = fields.id("id");
    String title = fields.text("title", "name it as it shall be shown");
    String source = fields.text("source", "name where the figures come from");
    SizeMm size = BoxFields.size(fields, "sizeMm");
    KnownMass mass = figures.mass(fields, Measure.MASS);
    Optional<Ratings> ratings = figures.ratingsIfGiven(fields);
    int headboardHeightMm = fields.whole("headboardHeightMm", Measure.DISTANCE);
    RegionReader regions =
        new RegionReader(
            figures, new Names(faults, "bays and spaces of the tray"), RegionCheck.NONE);
    List<BaySpec> bays = regions.bays(fields);
    List<SpaceSpec> spaces = regions.spaces(fields);
    fields.done();
    return new Tray(
        id,
        title,
        source,
        size,
        mass,
        ratings,
        headboardHeightMm,
        bays,
        spaces,
        /* frontXMm= */ 0,
        /* deckZMm= */ 0);
  }

  Canopy canopy(Fields fields) {
    String id = fields.id("id");
    String title = fields.text("title", "name it as it shall be shown");
    String source = fields.text("source", "name where the figures come from");
    SizeMm size = BoxFields.size(fields, "sizeMm");
    KnownMass mass = figures.mass(fields, Measure.MASS);
    Fields insideFields = fields.object("inside", "give the clear inside with corner and size");
    LocalBoxMm inside = BoxFields.hostBox(insideFields);
    insideFields.done();
    Names doorIds = new Names(faults, "doors of the canopy");
    List<Door> doors = doors(fields, doorIds);
    Optional<RoofLimits> roof = Figures.roofIfGiven(fields, "roof");
    boolean liftOffLegs = fields.flag("liftOffLegs");
    RegionCheck check = fields.good("inside") ? RegionCheck.canopy(inside) : RegionCheck.NONE;
    RegionReader regions =
        new RegionReader(figures, new Names(faults, "bays and spaces of the canopy"), check);
    List<BaySpec> bays = regions.bays(fields);
    List<SpaceSpec> spaces = regions.spaces(fields);
    checkInside(fields, insideFields, size, inside);
    new DoorNames(doorIds).check(fields.again());
    fields.done();
    return new Canopy(
        id,
        title,
        source,
        size,
        mass,
        inside,
        doors,
        roof,
        liftOffLegs,
        bays,
        spaces,
        /* fromTrayFrontMm= */ 0);
  }

  private static void checkInside(
      Fields canopy, Fields insideFields, SizeMm size, LocalBoxMm inside) {
    if (!canopy.good("sizeMm", "inside")) {
      return;
    }
    int half = (size.widthMm() + 1) / 2;
    boolean fits =
        inside.aMm() >= 0
            && inside.aMm() + inside.size().lengthMm() <= size.lengthMm()
            && inside.bMm() >= -half
            && inside.bMm() + inside.size().widthMm() <= half
            && inside.cMm() >= 0
            && inside.cMm() + inside.size().heightMm() <= size.heightMm();
    if (!fits) {
      insideFields.error(
          Code.OUTSIDE_HOST,
          "cornerMm",
          "reaches out of the canopy's outside of "
              + size.lengthMm()
              + " x "
              + size.widthMm()
              + " x "
              + size.heightMm()
              + " mm",
          "x starts at the canopy's front face, y at the centre plane, z at its floor");
    }
  }

  private static List<Door> doors(Fields canopy, Names doorIds) {
    List<Door> doors = new ArrayList<>();
    for (Fields fields : canopy.objects("doors", 0, "list the doors, or write [] for none")) {
      String id = fields.id("id");
      doorIds.claim(id, fields.place("id"));
      String title = fields.text("title", "name it as it shall be shown");
      Facing side = fields.word("side", Words.FACING);
      int fromMm = fields.whole("fromMm", Measure.COORDINATE);
      int toMm = fields.whole("toMm", Measure.COORDINATE);
      int sillZMm = fields.whole("sillZMm", Measure.COORDINATE);
      int headZMm = fields.whole("headZMm", Measure.COORDINATE);
      List<Door.Strut> struts = new ArrayList<>();
      for (Fields strut : fields.objectsIfGiven("struts")) {
        struts.add(strut(strut));
      }
      fields.done();
      inOrder(fields, "fromMm", fromMm, "toMm", toMm);
      inOrder(fields, "sillZMm", sillZMm, "headZMm", headZMm);
      doors.add(new Door(id, title, side, fromMm, toMm, sillZMm, headZMm, struts));
    }
    return doors;
  }

  private static Door.Strut strut(Fields fields) {
    int fromMm = fields.whole("fromMm", Measure.COORDINATE);
    int toMm = fields.whole("toMm", Measure.COORDINATE);
    int lowerZMm = fields.whole("lowerZMm", Measure.COORDINATE);
    int upperZMm = fields.whole("upperZMm", Measure.COORDINATE);
    fields.done();
    inOrder(fields, "fromMm", fromMm, "toMm", toMm);
    inOrder(fields, "lowerZMm", lowerZMm, "upperZMm", upperZMm);
    return new Door.Strut(fromMm, toMm, lowerZMm, upperZMm);
  }

  private static void inOrder(Fields fields, String fromKey, int from, String toKey, int to) {
    if (fields.good(fromKey, toKey) && to <= from) {
      fields.error(
          Code.ENDS_OUT_OF_ORDER,
          toKey,
          "is " + to + " mm, must be above the " + from + " mm of " + fromKey,
          "swap the two if they are mixed up");
    }
  }
}
