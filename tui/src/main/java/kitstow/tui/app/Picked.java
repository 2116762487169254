package kitstow.tui.app;

/** What can be picked from the catalogue. */
public enum Picked {
  /** Gear. */
  GEAR,
  /** A module of the fit-out. */
  MODULE,
  /** An accessory. */
  ACCESSORY
}
