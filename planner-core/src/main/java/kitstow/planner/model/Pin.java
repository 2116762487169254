package kitstow.planner.model;

import java.util.Optional;
import kitstow.planner.geometry.Turn;

/**
 * A wish of the user that the plan must keep.
 *
 * @param spaceId the space the item must be in; for a bay the bay's own space
 * @param corner the exact corner, if pinned to a place
 * @param turn the turn, if pinned
 */
public record Pin(String spaceId, Optional<SpacePointMm> corner, Optional<Turn> turn) {}
