package kitstow.planner.json;

import java.util.Optional;
import java.util.OptionalLong;
import kitstow.planner.model.KnownMass;
import kitstow.planner.model.MassSource;
import kitstow.planner.model.Ratings;
import kitstow.planner.model.RoofLimits;
import kitstow.planner.model.Settings;

/**
 * Reads masses and ratings, and sets what is not given from the settings: a tolerance from mass and
 * source, a moving rating from the static one. Grams, rounded down.
 *
 * @param settings derates of ratings
 * @param ratios tolerances by source
 */
record Figures(Settings settings, ToleranceRatios ratios) {
  /** What a catalogue is read with. */
  static final Figures DEFAULTS = new Figures(Settings.DEFAULTS, ToleranceRatios.DEFAULTS);

  /**
   * Tolerances as a share of a mass where none is given, per mille (common practice, no source).
   *
   * @param weighedPermille read off a scale
   * @param platePermille read off a plate
   * @param labelPermille read off a label
   * @param estimatePermille guessed
   */
  record ToleranceRatios(
      int weighedPermille, int platePermille, int labelPermille, int estimatePermille) {
    static final ToleranceRatios DEFAULTS = new ToleranceRatios(10, 30, 50, 200);

    /** Tolerance of a mass in grams, rounded down. */
    long toleranceG(long massG, MassSource source) {
      int permille =
          switch (source) {
            case WEIGHED -> weighedPermille;
            case PLATE -> platePermille;
            case LABEL -> labelPermille;
            case ESTIMATE -> estimatePermille;
          };
      return massG * permille / 1000L;
    }
  }

  /** The mass under {@code massKg} with source and tolerance. */
  KnownMass mass(Fields fields, Measure measure) {
    long massG = fields.number("massKg", measure);
    return known(massG, source(fields), tolerance(fields, "massToleranceKg"));
  }

  /** Where masses of an object come from. */
  static MassSource source(Fields fields) {
    return fields.word("massSource", Words.MASS_SOURCE);
  }

  /** A tolerance in grams, if it is given. */
  static OptionalLong tolerance(Fields fields, String key) {
    return fields.numberIfGiven(key, Measure.MASS_OR_ZERO);
  }

  /** A mass with the tolerance that is given, or that of its source. */
  KnownMass known(long massG, MassSource source, OptionalLong toleranceG) {
    return new KnownMass(massG, source, toleranceG.orElse(ratios.toleranceG(massG, source)));
  }

  /** Ratings under {@code ratings}, if they are given. */
  Optional<Ratings> ratingsIfGiven(Fields fields) {
    return fields.objectIfGiven("ratings").map(this::ratings);
  }

  /** Ratings under {@code ratings}, which must be given. */
  Ratings ratingsOf(Fields fields) {
    return ratings(fields.object("ratings", "give {\"staticKg\": ...}"));
  }

  private Ratings ratings(Fields fields) {
    long staticG = fields.number("staticKg", Measure.RATING);
    OptionalLong roadG = fields.numberIfGiven("roadKg", Measure.RATING);
    OptionalLong offRoadG = fields.numberIfGiven("offRoadKg", Measure.RATING);
    fields.done();
    Ratings derated = settings.derated(staticG);
    return new Ratings(
        staticG,
        roadG.orElse(derated.roadG()),
        offRoadG.orElse(derated.offRoadG()),
        !roadG.isPresent() || !offRoadG.isPresent());
  }

  /** Roof limits under a key, if they are given. */
  static Optional<RoofLimits> roofIfGiven(Fields fields, String key) {
    return fields
        .objectIfGiven(key)
        .map(
            roof -> {
              RoofLimits limits =
                  new RoofLimits(
                      roof.number("movingKg", Measure.RATING),
                      roof.number("parkedKg", Measure.RATING));
              roof.done();
              return limits;
            });
  }
}
