package kitstow.planner.model;

import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Axle loads of the ute before the trip and what they were taken with, so that it can be taken out
 * once and each state's own fuel and people put in. Kerb, tare and running order of one ute give
 * the same states.
 *
 * @param front load on the front axle
 * @param rear load on the rear axle
 * @param fuelMl millilitres aboard by tank id
 * @param people who sat in it
 * @param fitted ids of removable parts, accessories, the tray or the canopy that were on it
 * @param source plate, handbook page or weighbridge ticket
 * @param date when it was read or weighed, as written
 */
public record EmptyAxleLoads(
    KnownMass front,
    KnownMass rear,
    Map<String, Long> fuelMl,
    List<PersonAboard> people,
    Set<String> fitted,
    String source,
    String date) {
  /** Copies its collections. */
  public EmptyAxleLoads {
    fuelMl = Map.copyOf(fuelMl);
    people = List.copyOf(people);
    fitted = Set.copyOf(fitted);
  }

  /** A person aboard at the weighing. */
  public record PersonAboard(String seatId, long massG) {}
}
