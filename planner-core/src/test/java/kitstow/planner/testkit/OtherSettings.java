package kitstow.planner.testkit;

import kitstow.planner.model.Settings;

/** The default settings with one of them changed. */
public final class OtherSettings {
  private OtherSettings() {}

  /** Another least supported share of a base. */
  public static Settings withSupportPermille(int supportPermille) {
    return with(supportPermille, Settings.DEFAULTS.roofGearG());
  }

  /** Another mass up to which anything may ride on a roof. */
  public static Settings withRoofGearG(long roofGearG) {
    return with(Settings.DEFAULTS.supportPermille(), roofGearG);
  }

  private static Settings with(int supportPermille, long roofGearG) {
    Settings d = Settings.DEFAULTS;
    return new Settings(
        d.massLimits(),
        d.kerbSide(),
        supportPermille,
        d.apertureClearanceMm(),
        d.roadDeratePermille(),
        d.offRoadDeratePermille(),
        d.offRoadRoofPermille(),
        roofGearG,
        d.leftRightLimitG(),
        d.frontShareSoloPermille(),
        d.frontShareTowingPermille(),
        d.frontDropPermille(),
        d.seatAllowanceG(),
        d.liquidTolerancePermille());
  }

  /** Mass limits kept or only reported. */
  public static Settings withMassLimits(Settings.MassLimits massLimits) {
    Settings d = Settings.DEFAULTS;
    return new Settings(
        massLimits,
        d.kerbSide(),
        d.supportPermille(),
        d.apertureClearanceMm(),
        d.roadDeratePermille(),
        d.offRoadDeratePermille(),
        d.offRoadRoofPermille(),
        d.leftRightLimitG(),
        d.frontShareSoloPermille(),
        d.frontShareTowingPermille(),
        d.frontDropPermille(),
        d.seatAllowanceG(),
        d.liquidTolerancePermille());
  }
}
