package kitstow.planner.testkit;

import kitstow.planner.model.Regimes;
import kitstow.planner.model.Settings;

/** The default settings with one of them changed. */
public final class OtherSettings {
  private OtherSettings() {}

  /** Other towing practice or regulations. */
  public static Settings withRegimes(Regimes regimes) {
    return Settings.DEFAULTS.withRegimes(regimes);
  }

  /** Another least supported share of a base. */
  public static Settings withSupportPermille(int supportPermille) {
    Settings d = Settings.DEFAULTS;
    return new Settings(
        d.massLimits(),
        d.kerbSide(),
        supportPermille,
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
