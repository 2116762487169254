package kitstow.planner.model;

/**
 * Names of all rules. The name is the one in reports, JSON and tests; both judges use it. What a
 * rule says is in the class that carries it out.
 */
public enum RuleId {
  /** Total mass within GVM. Subject: "ute". */
  GVM_LIMIT(RuleKind.LIMIT),
  /** Front axle load within its limit. Subject: "front-axle". */
  FRONT_AXLE_LIMIT(RuleKind.LIMIT),
  /** Rear axle load within its limit. Subject: "rear-axle". */
  REAR_AXLE_LIMIT(RuleKind.LIMIT),
  /** Front tyres within their load index. Subject: "front-tyres". */
  FRONT_TYRE_LIMIT(RuleKind.LIMIT),
  /** Rear tyres within their load index. Subject: "rear-tyres". */
  REAR_TYRE_LIMIT(RuleKind.LIMIT),
  /** Ute and trailer within GCM. Subject: trailer id. */
  GCM_LIMIT(RuleKind.LIMIT),
  /** Trailer within the braked or unbraked towing limit. Subject: trailer id. */
  TOWING_LIMIT(RuleKind.LIMIT),
  /** Ball mass within its limit. Subject: trailer id. */
  BALL_LIMIT(RuleKind.LIMIT),
  /** All on the cab roof within its limit. Subject: "cab-roof". */
  CAB_ROOF_LIMIT(RuleKind.LIMIT),
  /** All on the canopy roof within its limit. Subject: "canopy-roof". */
  CANOPY_ROOF_LIMIT(RuleKind.LIMIT),
  /** Load on one bar within its rating. Subject: space id + ":" + bar id. */
  BAR_LIMIT(RuleKind.LIMIT),
  /** Contents of a space within its rating. Subject: space id. */
  SPACE_RATING(RuleKind.LIMIT),
  /** Load on a slide within its rating. Subject: module id. */
  SLIDE_RATING(RuleKind.LIMIT),
  /** Load carried by the fixed part of a module within its rating. Subject: module id. */
  MODULE_RATING(RuleKind.LIMIT),
  /** All that stands in a bay within the bay's rating. Subject: bay id. */
  BAY_RATING(RuleKind.LIMIT),
  /** All that stands on the tray within its rating. Subject: "tray". */
  TRAY_RATING(RuleKind.LIMIT),

  /** A module fits into its bay. Subjects: module id, bay id. */
  MODULE_IN_BAY(RuleKind.GEOMETRY),
  /** Module bodies and swept envelopes stay clear of each other. Subjects: both module ids. */
  MODULE_CLASH(RuleKind.GEOMETRY),
  /** Gear and modules outside the canopy stay clear of its body. Subject: item key or module id. */
  CANOPY_CLASH(RuleKind.GEOMETRY),
  /** A moving envelope with its tallest content passes its door. Subjects: module id, door id. */
  SLIDE_ENVELOPE(RuleKind.GEOMETRY),
  /** An item lies inside its space. Subjects: item key, space id. */
  INSIDE_SPACE(RuleKind.GEOMETRY),
  /** No two items share volume. Subjects: both item keys. */
  NO_OVERLAP(RuleKind.GEOMETRY),
  /** An item stands as it may. Subject: item key. */
  TURN_ALLOWED(RuleKind.GEOMETRY),
  /** Enough of the base is supported, with the centre over it. Subject: item key. */
  SUPPORT(RuleKind.GEOMETRY),
  /** What an item carries on top stays within what it may carry. Subject: item key. */
  BEARING(RuleKind.GEOMETRY),
  /** Nothing stands over an item that may carry nothing. Subjects: that item, the one above. */
  CLEAR_COLUMN(RuleKind.GEOMETRY),
  /** Air faces stay free. Subject: item key. */
  AIR_CLEARANCE(RuleKind.GEOMETRY),
  /** Lids can be opened. Subject: item key. */
  LID_CLEARANCE(RuleKind.GEOMETRY),
  /** An item passes a door of its space. Subjects: item key, space id. */
  DOOR_APERTURE(RuleKind.GEOMETRY),
  /** An item on bars has its centre between two bars beneath it. Subject: item key. */
  TWO_BARS(RuleKind.GEOMETRY),
  /** An item is where it is pinned. Subject: item key. */
  PIN_KEPT(RuleKind.GEOMETRY),

  /** Two items that may never share a space or its air. Subjects: both item keys. */
  FORBIDDEN_PAIR(RuleKind.COMPANY),
  /** Gas rides in the open or in a vented locker sealed from the box. Subjects: item, space. */
  GAS_OUTSIDE(RuleKind.COMPANY),
  /** Fuel rides in the open or in a vented locker sealed from the box. Subjects: item, space. */
  FUEL_OUTSIDE(RuleKind.COMPANY),
  /** What must stay dry is not in the open. Subjects: item key, space id. */
  UNDER_COVER(RuleKind.COMPANY),
  /** What rides on a roof is light, or bulky. Subjects: item key, space id. */
  ROOF_GEAR(RuleKind.COMPANY),
  /** Two items that had better not share a space. Subjects: both item keys. */
  POOR_COMPANY(RuleKind.PREFERENCE),

  /** Emergency gear comes out without moving anything. Subject: item key. */
  EMERGENCY_REACH(RuleKind.REACH),
  /** What must be at hand from a seat rides in the cab. Subjects: item key, space id. */
  CAB_REACH(RuleKind.REACH),
  /** Emergency gear comes out where doors stay shut. Subjects: item key, stop id. */
  STOP_REACH(RuleKind.REACH),
  /** Things to move before an item comes out. Subject: item key. */
  MOVES_TO_REACH(RuleKind.PREFERENCE),

  /** A must-take item or module is along. Subject: item key or module id. */
  MUST_TAKE(RuleKind.NEED),

  /** Load left and right alike. Subject: "ute". */
  LEFT_RIGHT(RuleKind.PREFERENCE),
  /** Share of the total on the front axle. Subject: "front-axle". */
  FRONT_AXLE_SHARE(RuleKind.PREFERENCE),
  /** Front axle load against the kerb ute. Subject: "front-axle". */
  FRONT_AXLE_DROP(RuleKind.PREFERENCE),
  /** Share of the trailer on the ball. Subject: trailer id. */
  BALL_SHARE(RuleKind.PREFERENCE),
  /** Share of the total on the front axle by a regulation. Subject: "front-axle". */
  FRONT_AXLE_FLOOR(RuleKind.PREFERENCE),
  /** Reach behind the rear axle by a regulation. Subject: "ute". */
  REAR_OVERHANG(RuleKind.PREFERENCE),
  /** Overall length on a leg, trailer included. Subject: "ute". */
  OVERALL_LENGTH(RuleKind.PREFERENCE),
  /** Overall height on a leg, trailer included. Subject: "ute". */
  OVERALL_HEIGHT(RuleKind.PREFERENCE);

  private final RuleKind kind;

  RuleId(RuleKind kind) {
    this.kind = kind;
  }

  /** What sort of thing the rule guards. */
  public RuleKind kind() {
    return kind;
  }

  /** Whether a breach makes a plan wrong; preferences only make notes. */
  public boolean binding() {
    return kind != RuleKind.PREFERENCE;
  }
}
