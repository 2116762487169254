package kitstow.planner.model;

/**
 * A tank: an empty body and a liquid that fills its box from the bottom.
 *
 * @param id unique in the scenario
 * @param title shown to people
 * @param kind what it holds
 * @param capacityMl full content in millilitres, above zero
 * @param densityGPerL density of the liquid in grams per litre
 * @param empty mass of the empty tank; zero where it belongs to the ute's empty axle loads
 * @param box inside of the tank in the frame of its host
 * @param startMl content when the trip starts, in millilitres
 */
public record Tank(
    String id,
    String title,
    SupplyKind kind,
    long capacityMl,
    long densityGPerL,
    KnownMass empty,
    LocalBoxMm box,
    long startMl) {
  /** The same tank with another content when the trip starts. */
  public Tank startingWith(long ml) {
    return new Tank(id, title, kind, capacityMl, densityGPerL, empty, box, ml);
  }

  /** The same tank under another id. */
  public Tank renamed(String other) {
    return new Tank(other, title, kind, capacityMl, densityGPerL, empty, box, startMl);
  }

  /** Mass of a content, rounded to a gram. */
  public long massOfG(long contentMl) {
    return (contentMl * densityGPerL + 500L) / 1000L;
  }
}
