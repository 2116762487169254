package kitstow.planner.json;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.BaySpec;
import kitstow.planner.model.FitOutModule;
import kitstow.planner.model.KnownMass;
import kitstow.planner.model.MassSource;
import kitstow.planner.model.Ratings;
import kitstow.planner.model.Slide;
import kitstow.planner.model.SpaceSpec;
import kitstow.planner.model.Tank;
import kitstow.planner.problem.Code;

/** Reads the fit-out modules of a catalogue; their tanks have their local ids. */
final class ModuleReader {
  private final Figures figures;
  private final Faults faults;

  ModuleReader(Figures figures, Faults faults) {
    this.figures = figures;
    this.faults = faults;
  }

  FitOutModule read(Fields fields) {
    String id = fields.id("id");
    String title = fields.text("title", "name it as it shall be shown");
    String source = fields.text("source", "name where the figures come from");
    SizeMm size = BoxFields.moduleSize(fields);
    long fixedG = fields.number("fixedKg", Measure.MASS_OR_ZERO);
    long movingG = fields.numberOr("movingKg", Measure.MASS_OR_ZERO, 0L);
    MassSource massSource = Figures.source(fields);
    OptionalLong fixedToleranceG = Figures.tolerance(fields, "fixedToleranceKg");
    OptionalLong movingToleranceG = Figures.tolerance(fields, "movingToleranceKg");
    KnownMass fixed = figures.known(fixedG, massSource, fixedToleranceG);
    KnownMass moving =
        movingG == 0L ? KnownMass.NONE : figures.known(movingG, massSource, movingToleranceG);
    Optional<Slide> slide = fields.objectIfGiven("slide").map(this::slide);
    Optional<Ratings> rating = figures.ratingsIfGiven(fields);
    boolean pullsOut = fields.has("slide");
    Optional<SizeMm> known = fields.good("sizeMm") ? Optional.of(size) : Optional.empty();
    RegionReader regions =
        new RegionReader(
            figures,
            new Names(faults, "bays and spaces of the module"),
            RegionCheck.module(known, pullsOut));
    List<SpaceSpec> spaces = regions.moduleSpaces(fields);
    List<BaySpec> bays = regions.moduleBays(fields);
    List<Tank> tanks =
        new TankReader(figures, new Names(faults, "tanks of the module")::claim)
            .tanks(fields.objectsIfGiven("tanks"), BoxFields::moduleBox);
    fields.done();
    if (movingG > 0L && !pullsOut && fields.good("movingKg")) {
      fields.error(
          Code.MOVES_WITHOUT_SLIDE,
          "movingKg",
          "is " + Decimals.kg(movingG) + " in a module that does not pull out",
          "give the module a \"slide\", or count the mass to fixedKg");
    }
    return new FitOutModule(
        id,
        title,
        /* entryId= */ id,
        source,
        size,
        fixed,
        moving,
        slide,
        rating,
        spaces,
        bays,
        tanks);
  }

  private Slide slide(Fields fields) {
    Slide slide =
        new Slide(
            fields.whole("extensionMm", Measure.SIZE),
            figures.ratingsOf(fields),
            fields.flagOr("contentsOnly", false),
            fields.flag("lockIn"),
            fields.flag("lockOut"));
    fields.done();
    return slide;
  }
}
