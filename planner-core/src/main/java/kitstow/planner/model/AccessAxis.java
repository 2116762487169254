package kitstow.planner.model;

/** The side from which a space is filled and reached. */
public enum AccessAxis {
  /** Through the face of the module or the door side of the bay that holds the space. */
  FACE,
  /** From above: an open deck or roof, or a drawer or slide when it is out. */
  ABOVE,
  /** From the left side. */
  LEFT,
  /** From the right side. */
  RIGHT,
  /** From the rear. */
  REAR,
  /** From the front. */
  FRONT
}
