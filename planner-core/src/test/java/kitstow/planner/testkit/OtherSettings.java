package kitstow.planner.testkit;

import kitstow.planner.model.Regimes;
import kitstow.planner.model.Settings;

/** The default settings with one of them changed. */
public final class OtherSettings {
  private static final Settings DEFAULTS = Settings.DEFAULTS;

  private OtherSettings() {}

  /** Other towing practice or regulations. */
  public static Settings withRegimes(Regimes regimes) {
    return Settings.DEFAULTS.withRegimes(regimes);
  }

  /** Another least supported share of a base. */
  public static Settings withSupportPermille(int supportPermille) {
    return with(DEFAULTS.massLimits(), supportPermille, DEFAULTS.roofGearG());
  }

  /** Another mass up to which anything may ride on a roof. */
  public static Settings withRoofGearG(long roofGearG) {
    return with(DEFAULTS.massLimits(), DEFAULTS.supportPermille(), roofGearG);
  }

  /** Mass limits kept or only reported. */
  public static Settings withMassLimits(Settings.MassLimits massLimits) {
    return with(massLimits, DEFAULTS.supportPermille(), DEFAULTS.roofGearG());
  }

  /** Three of them changed. */
  public static Settings with(Settings.MassLimits massLimits, int supportPermille, long roofGearG) {
    Settings d = DEFAULTS;
    return new Settings(
        massLimits,
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
        d.liquidTolerancePermille(),
        d.regimes());
  }
}
