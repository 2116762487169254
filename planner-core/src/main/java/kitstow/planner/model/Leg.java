package kitstow.planner.model;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;

/**
 * A leg of the trip. Masses change evenly along it.
 *
 * @param id unique in the trip
 * @param title shown to people
 * @param distanceKm distance driven
 * @param days time taken, zero or more
 * @param surface what it is driven on
 * @param trailerId the trailer on it, if any
 * @param wet whether canvas gets wet on it
 * @param resupply what is filled up before it starts
 * @param emptyRubbish whether grown mass is left behind before it starts
 * @param room how long and high ute and trailer may be on it
 */
public record Leg(
    String id,
    String title,
    double distanceKm,
    double days,
    Surface surface,
    Optional<String> trailerId,
    boolean wet,
    List<Resupply> resupply,
    boolean emptyRubbish,
    Room room) {
  /** Copies its collections. */
  public Leg {
    resupply = List.copyOf(resupply);
  }

  /** A leg on which nothing limits length and height. */
  public Leg(
      String id,
      String title,
      double distanceKm,
      double days,
      Surface surface,
      Optional<String> trailerId,
      boolean wet,
      List<Resupply> resupply,
      boolean emptyRubbish) {
    this(
        id,
        title,
        distanceKm,
        days,
        surface,
        trailerId,
        wet,
        resupply,
        emptyRubbish,
        Room.UNLIMITED);
  }

  /** The same leg with another trailer, or none. */
  public Leg towing(Optional<String> trailer) {
    return with(trailer, resupply);
  }

  /** The same leg with other things filled up before it. */
  public Leg filling(List<Resupply> others) {
    return with(trailerId, others);
  }

  private Leg with(Optional<String> trailer, List<Resupply> filled) {
    return new Leg(id, title, distanceKm, days, surface, trailer, wet, filled, emptyRubbish, room);
  }

  /**
   * What a ferry, a garage or a bridge on the way takes.
   *
   * @param lengthMm most overall length, trailer included
   * @param heightMm most overall height, trailer included
   */
  public record Room(OptionalInt lengthMm, OptionalInt heightMm) {
    /** No limit. */
    public static final Room UNLIMITED = new Room(OptionalInt.empty(), OptionalInt.empty());
  }

  /**
   * Filling up before a leg.
   *
   * @param kind what is filled
   * @param addG grams added in the order of use; absent means filled to the start of the trip
   */
  public record Resupply(SupplyKind kind, OptionalLong addG) {}
}
