package kitstow.planner.model;

/**
 * Figures that common practice sets and no standard does; each can be changed in the scenario.
 *
 * @param massLimits whether mass limits are kept or only reported
 * @param kerbSide the side away from traffic
 * @param supportPermille least supported share of a base, per mille
 * @param apertureClearanceMm room an item needs around it in a door
 * @param roadDeratePermille road rating from a static one where the maker gives none
 * @param offRoadDeratePermille off-road rating from a static one where the maker gives none
 * @param offRoadRoofPermille moving roof limits off the road
 * @param roofGearG what may ride on a roof without being bulky, grams
 * @param leftRightLimitG largest difference between the sides, grams
 * @param frontShareSoloPermille front axle share below which a note is made, no trailer
 * @param frontShareTowingPermille the same with a trailer on
 * @param frontDropPermille loss of front axle load against the kerb ute above which a note is made
 * @param seatAllowanceG certification allowance for one seat, grams
 * @param liquidTolerancePermille tolerance of a liquid's mass
 * @param regimes towing practice and regulations to look at
 */
public record Settings(
    MassLimits massLimits,
    Facing kerbSide,
    int supportPermille,
    int apertureClearanceMm,
    int roadDeratePermille,
    int offRoadDeratePermille,
    int offRoadRoofPermille,
    long roofGearG,
    long leftRightLimitG,
    int frontShareSoloPermille,
    int frontShareTowingPermille,
    int frontDropPermille,
    long seatAllowanceG,
    int liquidTolerancePermille,
    Regimes regimes) {

  /**
   * Defaults: support 0.8, door clearance 10 mm, derates 0.75 and 0.6, roof off-road 0.667, roof
   * gear up to 12 kg, sides within 50 kg, front share 38 % solo and 33 % towing, front drop 10 %
   * (all common practice, no source); a seat as in {@link SeatAllowance#AUSTRALIA}; liquids 1.5 %
   * (EN 590: 820 to 845 kg/m3 [S92]).
   */
  public static final Settings DEFAULTS =
      new Settings(
          MassLimits.KEEP,
          Facing.LEFT,
          /* supportPermille= */ 800,
          /* apertureClearanceMm= */ 10,
          /* roadDeratePermille= */ 750,
          /* offRoadDeratePermille= */ 600,
          /* offRoadRoofPermille= */ 667,
          /* roofGearG= */ 12_000L,
          /* leftRightLimitG= */ 50_000L,
          /* frontShareSoloPermille= */ 380,
          /* frontShareTowingPermille= */ 330,
          /* frontDropPermille= */ 100,
          SeatAllowance.AUSTRALIA.massG(),
          /* liquidTolerancePermille= */ 15);

  /** Settings with the usual towing practice and no regulation. */
  public Settings(
      MassLimits massLimits,
      Facing kerbSide,
      int supportPermille,
      int apertureClearanceMm,
      int roadDeratePermille,
      int offRoadDeratePermille,
      int offRoadRoofPermille,
      long roofGearG,
      long leftRightLimitG,
      int frontShareSoloPermille,
      int frontShareTowingPermille,
      int frontDropPermille,
      long seatAllowanceG,
      int liquidTolerancePermille) {
    this(
        massLimits,
        kerbSide,
        supportPermille,
        apertureClearanceMm,
        roadDeratePermille,
        offRoadDeratePermille,
        offRoadRoofPermille,
        roofGearG,
        leftRightLimitG,
        frontShareSoloPermille,
        frontShareTowingPermille,
        frontDropPermille,
        seatAllowanceG,
        liquidTolerancePermille,
        Regimes.DEFAULTS);
  }

  /** The same settings with other regimes. */
  public Settings withRegimes(Regimes others) {
    return new Settings(
        massLimits,
        kerbSide,
        supportPermille,
        apertureClearanceMm,
        roadDeratePermille,
        offRoadDeratePermille,
        offRoadRoofPermille,
        roofGearG,
        leftRightLimitG,
        frontShareSoloPermille,
        frontShareTowingPermille,
        frontDropPermille,
        seatAllowanceG,
        liquidTolerancePermille,
        others);
  }

  /** What to do with a rig that cannot keep its mass limits. */
  public enum MassLimits {
    /** Leave gear home until they are kept. */
    KEEP,
    /** Pack everything and report what is over. */
    REPORT
  }

  /** Ratings from a static figure alone; the derated ones are rounded down to a gram. */
  public Ratings derated(long staticG) {
    return new Ratings(
        staticG,
        staticG * roadDeratePermille / 1000L,
        staticG * offRoadDeratePermille / 1000L,
        /* derived= */ true);
  }
}
