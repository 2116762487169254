package kitstow.planner.model;

import java.util.List;
import java.util.Optional;
import kitstow.planner.geometry.BoxMm;

/**
 * One body with mass. Its mass is spread evenly over its box.
 *
 * @param key unique: the id, or {@code id#unit} where an item has several units
 * @param id id of the thing
 * @param unit unit of an item that has several, else 0
 * @param kind what it is
 * @param title shown to people
 * @param spaceId space an item stands in
 * @param box place with everything closed and tanks full, vehicle frame
 * @param nominalG full mass in grams
 * @param toleranceG 95 % half width at full mass, grams; nothing for what was on the ute when it
 *     was weighed, see {@link Loading#ownToleranceG}
 * @param toleranceKey bodies of one key share their error fully; different keys are independent
 * @param zone part of the vehicle it counts in, where that matters for a roof ledger
 * @param inOverhang whether it counts in the rear overhang moment (all but the ute's own axle
 *     loads)
 * @param movesWith ids of the modules whose slides carry it, innermost first
 * @param inModules ids of the modules it is in or on, innermost first
 */
public record Body(
    String key,
    String id,
    int unit,
    BodyKind kind,
    String title,
    Optional<String> spaceId,
    BoxMm box,
    long nominalG,
    long toleranceG,
    String toleranceKey,
    Optional<Zone> zone,
    boolean inOverhang,
    List<String> movesWith,
    List<String> inModules) {
  /** Copies its collections. */
  public Body {
    movesWith = List.copyOf(movesWith);
    inModules = List.copyOf(inModules);
  }
}
