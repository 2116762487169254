package kitstow.planner.model;

/** What a body is. */
public enum BodyKind {
  /** The empty ute at an axle line. */
  UTE,
  /** A removable part in its place. */
  PART,
  /** A fixed accessory. */
  ACCESSORY,
  /** The tray. */
  TRAY,
  /** The canopy. */
  CANOPY,
  /** Fixed or moving part of a module. */
  MODULE,
  /** An empty tank. */
  TANK,
  /** The liquid in a tank. */
  LIQUID,
  /** A unit of gear. */
  ITEM,
  /** A person. */
  PERSON,
  /** Ball mass of a trailer. */
  BALL
}
