package kitstow.planner.model;

/** What a leg is driven on; chooses between road and off-road ratings. */
public enum Surface {
  /** Sealed or well-kept road. */
  ROAD,
  /** Track, sand or corrugations. */
  OFF_ROAD
}
