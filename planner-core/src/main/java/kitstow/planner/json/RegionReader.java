package kitstow.planner.json;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kitstow.planner.model.AccessAxis;
import kitstow.planner.model.BaySpec;
import kitstow.planner.model.Environment;
import kitstow.planner.model.Facing;
import kitstow.planner.model.LocalBoxMm;
import kitstow.planner.model.Ratings;
import kitstow.planner.model.RoofBars;
import kitstow.planner.model.SpaceSpec;
import kitstow.planner.model.Zone;
import kitstow.planner.problem.Code;

/** Reads bays and spaces, in the frame of a ute, tray or canopy or in that of a module. */
final class RegionReader {
  /** Side and zone of a bay or space in a module, which really takes those of the module's bay. */
  static final Facing MODULE_FACING = Facing.REAR;

  /** See {@link #MODULE_FACING}. */
  static final Zone MODULE_ZONE = Zone.TRAY;

  private final Figures figures;
  private final Names ids;
  private final RegionCheck check;

  /**
   * A reader for the regions of one host.
   *
   * @param ids ids of the host's bays and spaces, which are one name space
   */
  RegionReader(Figures figures, Names ids, RegionCheck check) {
    this.figures = figures;
    this.ids = ids;
    this.check = check;
  }

  /** Bays of a ute, tray or canopy. */
  List<BaySpec> bays(Fields host) {
    List<BaySpec> bays = new ArrayList<>();
    for (Fields fields : host.objectsIfGiven("bays")) {
      bays.add(bay(fields));
    }
    return bays;
  }

  private BaySpec bay(Fields fields) {
    String id = claimedId(fields);
    String title = title(fields);
    LocalBoxMm box = BoxFields.hostBox(fields);
    Facing facing = fields.word("facing", Words.FACING);
    List<String> doors = fields.namesIfGiven("doors");
    Optional<Ratings> ratings = figures.ratingsIfGiven(fields);
    Zone zone = fields.word("zone", Words.ZONE);
    Set<Environment> environment = environment(fields);
    boolean ownAir = fields.flagOr("ownAir", false);
    boolean spaceWhenEmpty = fields.flagOr("spaceWhenEmpty", false);
    fields.done();
    check.hostRegion(fields, box, zone);
    return new BaySpec(
        id,
        title,
        box,
        facing,
        doors,
        ratings,
        /* moves= */ false,
        zone,
        environment,
        ownAir,
        spaceWhenEmpty);
  }

  /** Spaces of a ute, tray or canopy. */
  List<SpaceSpec> spaces(Fields host) {
    List<SpaceSpec> spaces = new ArrayList<>();
    for (Fields fields : host.objectsIfGiven("spaces")) {
      spaces.add(space(fields));
    }
    return spaces;
  }

  private SpaceSpec space(Fields fields) {
    String id = claimedId(fields);
    String title = title(fields);
    LocalBoxMm box = BoxFields.hostBox(fields);
    Optional<Ratings> ratings = figures.ratingsIfGiven(fields);
    AccessAxis access = fields.word("access", Words.ACCESS);
    List<String> doors = fields.namesIfGiven("doors");
    Zone zone = fields.word("zone", Words.ZONE);
    Set<Environment> environment = environment(fields);
    boolean ownAir = fields.flagOr("ownAir", false);
    Optional<RoofBars> bars = bars(fields, box);
    fields.done();
    check.hostRegion(fields, box, zone);
    return new SpaceSpec(
        id,
        title,
        box,
        ratings,
        access,
        doors,
        /* moves= */ false,
        zone,
        environment,
        ownAir,
        bars);
  }

  /** Bays of a module. */
  List<BaySpec> moduleBays(Fields module) {
    List<BaySpec> bays = new ArrayList<>();
    for (Fields fields : module.objectsIfGiven("bays")) {
      String id = claimedId(fields);
      String title = title(fields);
      LocalBoxMm box = BoxFields.moduleBox(fields);
      Optional<Ratings> ratings = figures.ratingsIfGiven(fields);
      boolean moves = fields.flagOr("moves", false);
      Set<Environment> environment = environment(fields);
      boolean ownAir = fields.flagOr("ownAir", false);
      boolean spaceWhenEmpty = fields.flagOr("spaceWhenEmpty", false);
      fields.done();
      check.moduleRegion(fields, box, moves);
      bays.add(
          new BaySpec(
              id,
              title,
              box,
              MODULE_FACING,
              List.of(),
              ratings,
              moves,
              MODULE_ZONE,
              environment,
              ownAir,
              spaceWhenEmpty));
    }
    return bays;
  }

  /** Spaces of a module. */
  List<SpaceSpec> moduleSpaces(Fields module) {
    List<SpaceSpec> spaces = new ArrayList<>();
    for (Fields fields : module.objectsIfGiven("spaces")) {
      String id = claimedId(fields);
      String title = title(fields);
      LocalBoxMm box = BoxFields.moduleBox(fields);
      Optional<Ratings> ratings = figures.ratingsIfGiven(fields);
      AccessAxis access = fields.word("access", Words.MODULE_ACCESS);
      boolean moves = fields.flagOr("moves", false);
      Set<Environment> environment = environment(fields);
      boolean ownAir = fields.flagOr("ownAir", false);
      Optional<RoofBars> bars = bars(fields, box);
      fields.done();
      check.moduleRegion(fields, box, moves);
      spaces.add(
          new SpaceSpec(
              id,
              title,
              box,
              ratings,
              access,
              List.of(),
              moves,
              MODULE_ZONE,
              environment,
              ownAir,
              bars));
    }
    return spaces;
  }

  private String claimedId(Fields fields) {
    String id = fields.id("id");
    ids.claim(id, fields.place("id"));
    return id;
  }

  private static String title(Fields fields) {
    return fields.text("title", "name it as it shall be shown");
  }

  private static Set<Environment> environment(Fields fields) {
    return fields.words("environment", Words.ENVIRONMENT, Environment.class);
  }

  private Optional<RoofBars> bars(Fields space, LocalBoxMm box) {
    return space.objectIfGiven("bars").map(fields -> bars(space, fields, box));
  }

  private RoofBars bars(Fields space, Fields fields, LocalBoxMm box) {
    List<RoofBars.Bar> bars = new ArrayList<>();
    Names barIds = ids.another("bars of the space");
    List<Fields> listed = fields.objects("bars", /* least= */ 1, "list the bars, front one first");
    for (Fields bar : listed) {
      String id = bar.id("id");
      barIds.claim(id, bar.place("id"));
      int fromFrontMm = bar.whole("fromFrontMm", Measure.DISTANCE);
      bars.add(new RoofBars.Bar(id, fromFrontMm, figures.ratingsOf(bar)));
      bar.done();
    }
    boolean platformFloor = fields.flag("platformFloor");
    int frontMm = fields.wholeOr("projectionFrontMm", Measure.DISTANCE, 0);
    int rearMm = fields.wholeOr("projectionRearMm", Measure.DISTANCE, 0);
    int sideMm = fields.wholeOr("projectionSideMm", Measure.DISTANCE, 0);
    fields.done();
    checkBars(space, listed, bars, box);
    return new RoofBars(bars, platformFloor, frontMm, rearMm, sideMm);
  }

  private static void checkBars(
      Fields space, List<Fields> listed, List<RoofBars.Bar> bars, LocalBoxMm box) {
    int lengthMm = box.size().lengthMm();
    for (int i = 0; i < bars.size(); i++) {
      int atMm = bars.get(i).fromFrontMm();
      Fields fields = listed.get(i);
      if (!fields.good("fromFrontMm")) {
        continue;
      }
      if (space.good("sizeMm") && atMm > lengthMm) {
        fields.error(
            Code.BAR_OUTSIDE_SPACE,
            "fromFrontMm",
            "is " + atMm + " mm, must be within the space's length of " + lengthMm + " mm",
            "measure from the front of the space");
      }
      if (i > 0 && listed.get(i - 1).good("fromFrontMm") && atMm <= bars.get(i - 1).fromFrontMm()) {
        fields.error(
            Code.BARS_OUT_OF_ORDER,
            "fromFrontMm",
            "is "
                + atMm
                + " mm, must be above the "
                + bars.get(i - 1).fromFrontMm()
                + " mm of the bar before it",
            "list bars from front to rear");
      }
    }
  }
}
