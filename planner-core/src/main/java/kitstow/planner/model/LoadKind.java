package kitstow.planner.model;

/** What the vehicle does in a load state; decides which limits apply. */
public enum LoadKind {
  /** Driving: axle, mass, tyre, ball, moving roof and road or off-road ratings apply. */
  MOVING,
  /** Standing: parked roof limits and static ratings apply. */
  PARKED,
  /** The fit-out as built with full tanks and every seat taken, no trip gear; reported apart. */
  CERTIFICATION
}
