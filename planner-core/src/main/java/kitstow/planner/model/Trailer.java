package kitstow.planner.model;

/**
 * A trailer.
 *
 * @param id unique in the scenario
 * @param title shown to people
 * @param total uncoupled total mass
 * @param ball mass it puts on the ball
 * @param braked whether it has brakes
 */
public record Trailer(String id, String title, KnownMass total, KnownMass ball, boolean braked) {}
