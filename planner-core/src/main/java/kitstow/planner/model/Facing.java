package kitstow.planner.model;

/** The side of the vehicle towards which a bay opens and a module in it pulls out. */
public enum Facing {
  /** Towards the left side, against y. */
  LEFT,
  /** Towards the right side, along y. */
  RIGHT,
  /** Towards the rear, along x. */
  REAR
}
