package kitstow.planner.json;

/** What the place of an accessory is measured from. */
enum Carrier {
  /** The vehicle frame. */
  VEHICLE,
  /** The tray's front edge and deck. */
  TRAY,
  /** The canopy's front face and floor. */
  CANOPY;

  static final Words<Carrier> WORDS = Words.camel(values());
}
