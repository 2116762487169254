package kitstow.planner.model;

/**
 * What a carrying part may hold, in grams: parked, on the road and off the road.
 *
 * @param staticG parked
 * @param roadG moving on the road
 * @param offRoadG moving off the road
 * @param derived whether the moving figures were derived from the static one with the settings'
 *     derates (common practice, no source) because its maker gives none
 */
public record Ratings(long staticG, long roadG, long offRoadG, boolean derived) {
  /** Refuses negative ratings. */
  public Ratings {
    if (staticG < 0L || roadG < 0L || offRoadG < 0L) {
      throw new IllegalArgumentException(
          "ratings must not be negative: " + staticG + ", " + roadG + ", " + offRoadG + " g");
    }
  }

  /** The rating that applies in a state, in grams. */
  public long inG(LoadKind kind, Surface surface) {
    return switch (kind) {
      case PARKED -> staticG;
      case MOVING, CERTIFICATION -> surface == Surface.ROAD ? roadG : offRoadG;
    };
  }
}
