package kitstow.planner.model;

import java.util.OptionalInt;

/**
 * A trailer. Its ball mass is mass of the ute.
 *
 * @param id unique in the scenario
 * @param title shown to people
 * @param total uncoupled mass
 * @param ball mass on the tow ball
 * @param braked whether it has brakes
 * @param behindBallMm how far it reaches behind the ball, where that is known
 * @param heightMm how high it is above the ground, where that is known
 */
public record Trailer(
    String id,
    String title,
    KnownMass total,
    KnownMass ball,
    boolean braked,
    OptionalInt behindBallMm,
    OptionalInt heightMm) {
  /** A trailer whose size nobody knows. */
  public Trailer(String id, String title, KnownMass total, KnownMass ball, boolean braked) {
    this(id, title, total, ball, braked, OptionalInt.empty(), OptionalInt.empty());
  }
}
