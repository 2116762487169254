package kitstow.planner.model;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import kitstow.planner.geometry.BoxMm;

/**
 * A bay in its place on the vehicle.
 *
 * @param id unique in the rig: the host's bay id, or {@code module/bay} on a module
 * @param title shown to people
 * @param hostId "ute", "tray", "canopy" or the id of the module it is on
 * @param box vehicle frame
 * @param facing the side it opens to
 * @param doorIds canopy doors in front of it
 * @param ratings what may stand in it
 * @param moves whether it rides on the moving part of its host module
 * @param zone part of the vehicle
 * @param environment air and walls
 * @param airId spaces of one air id share air
 * @param spaceWhenEmpty whether gear may stand in it when no module does: with the smaller bays in
 *     it as one space as long as no module reaches in, else in what those are
 */
public record Bay(
    String id,
    String title,
    String hostId,
    BoxMm box,
    Facing facing,
    List<String> doorIds,
    Optional<Ratings> ratings,
    boolean moves,
    Zone zone,
    Set<Environment> environment,
    String airId,
    boolean spaceWhenEmpty) {
  /** Copies its collections. */
  public Bay {
    doorIds = List.copyOf(doorIds);
    environment = Set.copyOf(environment);
  }
}
