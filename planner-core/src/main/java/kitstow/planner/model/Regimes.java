package kitstow.planner.model;

/**
 * Figures of towing practice and of regulations that somebody may want a plan held against. None is
 * law for every ute: a regulation is looked at only where a scenario asks for it.
 *
 * @param ballShareLeastPermille least ball mass as a share of the trailer
 * @param ballShareMostPermille largest ball mass as a share of the trailer
 * @param frontFloorPermille least share of the total on the front axle by a regulation; zero for
 *     none
 * @param rearOverhang how far body and load may reach behind the rear axle by a regulation
 */
public record Regimes(
    int ballShareLeastPermille,
    int ballShareMostPermille,
    int frontFloorPermille,
    RearOverhang rearOverhang) {
  /** A ball mass of 6 to 15 % of the trailer (common practice, no source); no regulation. */
  public static final Regimes DEFAULTS =
      new Regimes(
          /* ballShareLeastPermille= */ 60,
          /* ballShareMostPermille= */ 150,
          /* frontFloorPermille= */ 0,
          RearOverhang.NONE);

  /** Rules of rear overhang. */
  public enum RearOverhang {
    /** None is looked at. */
    NONE,
    /** 60 % of the wheelbase. */
    SIXTY_PERCENT,
    /** The lesser of 60 % of the wheelbase and 3.7 m. */
    AUSTRALIAN
  }
}
