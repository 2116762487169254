package kitstow.planner.json;

import java.util.Optional;
import kitstow.planner.json.Figures.ToleranceRatios;
import kitstow.planner.model.Regimes;
import kitstow.planner.model.Settings;

/** Reads the settings of a scenario; each one has a default. */
final class SettingsReader {
  private SettingsReader() {}

  static Figures read(Fields scenario) {
    Optional<Fields> given = scenario.objectIfGiven("settings");
    if (!given.isPresent()) {
      return Figures.DEFAULTS;
    }
    Fields fields = given.get();
    Settings standard = Settings.DEFAULTS;
    Settings settings =
        new Settings(
            fields.wordOr("massLimits", Words.MASS_LIMITS, standard.massLimits()),
            fields.wordOr("kerbSide", Words.SIDE, standard.kerbSide()),
            ratio(fields, "supportRatio", standard.supportPermille()),
            fields.wholeOr("apertureClearanceMm", Measure.DISTANCE, standard.apertureClearanceMm()),
            ratio(fields, "roadDerateRatio", standard.roadDeratePermille()),
            ratio(fields, "offRoadDerateRatio", standard.offRoadDeratePermille()),
            ratio(fields, "offRoadRoofRatio", standard.offRoadRoofPermille()),
            fields.numberOr("roofGearKg", Measure.RATING, standard.roofGearG()),
            fields.numberOr("leftRightLimitKg", Measure.RATING, standard.leftRightLimitG()),
            ratio(fields, "frontShareSoloRatio", standard.frontShareSoloPermille()),
            ratio(fields, "frontShareTowingRatio", standard.frontShareTowingPermille()),
            ratio(fields, "frontDropRatio", standard.frontDropPermille()),
            fields.numberOr("seatAllowanceKg", Measure.RATING, standard.seatAllowanceG()),
            ratio(fields, "liquidToleranceRatio", standard.liquidTolerancePermille()),
            regimes(fields));
    ToleranceRatios ratios =
        fields
            .objectIfGiven("toleranceRatios")
            .map(SettingsReader::ratios)
            .orElse(ToleranceRatios.DEFAULTS);
    fields.done();
    return new Figures(settings, ratios);
  }

  private static Regimes regimes(Fields fields) {
    Regimes standard = Regimes.DEFAULTS;
    return new Regimes(
        ratio(fields, "ballShareLeastRatio", standard.ballShareLeastPermille()),
        ratio(fields, "ballShareMostRatio", standard.ballShareMostPermille()),
        ratio(fields, "frontFloorRatio", standard.frontFloorPermille()),
        fields.wordOr("rearOverhang", Words.REAR_OVERHANG, standard.rearOverhang()));
  }

  private static ToleranceRatios ratios(Fields fields) {
    ToleranceRatios standard = ToleranceRatios.DEFAULTS;
    ToleranceRatios ratios =
        new ToleranceRatios(
            ratio(fields, "weighed", standard.weighedPermille()),
            ratio(fields, "plate", standard.platePermille()),
            ratio(fields, "label", standard.labelPermille()),
            ratio(fields, "estimate", standard.estimatePermille()));
    fields.done();
    return ratios;
  }

  private static int ratio(Fields fields, String key, int otherwise) {
    return fields.wholeOr(key, Measure.RATIO, otherwise);
  }
}
