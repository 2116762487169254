package kitstow.planner.model;

/**
 * How far a body is from its listed place in one state: a drawer pulled out, a liquid that has
 * sunk.
 *
 * @param xMm rearward
 * @param yMm to the right
 * @param zMm up; a fraction of a millimetre for liquids
 */
public record ShiftMm(int xMm, int yMm, double zMm) {
  /** In place. */
  public static final ShiftMm NONE = new ShiftMm(0, 0, 0.0);
}
