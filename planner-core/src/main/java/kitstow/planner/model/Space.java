package kitstow.planner.model;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.PointMm;

/**
 * A space in its place on the vehicle, everything closed.
 *
 * @param id unique in the rig: the host's space id, {@code module/space} in a module, or the id of
 *     an empty bay
 * @param title shown to people
 * @param hostId "ute", "tray", "canopy", a module id, or for an empty bay the bay's host
 * @param box vehicle frame
 * @param ratings what it may hold
 * @param access the side from which it is filled; never {@link AccessAxis#FACE}
 * @param doorIds canopy doors it is filled through
 * @param zone part of the vehicle
 * @param environment air and walls
 * @param airId spaces of one air id share air
 * @param bars bars beneath it
 * @param movesWith ids of the modules whose slides carry it, innermost first; empty if it is fixed
 * @param inModules ids of the modules it is in or on, innermost first
 */
public record Space(
    String id,
    String title,
    String hostId,
    BoxMm box,
    Optional<Ratings> ratings,
    AccessAxis access,
    List<String> doorIds,
    Zone zone,
    Set<Environment> environment,
    String airId,
    Optional<RoofBars> bars,
    List<String> movesWith,
    List<String> inModules) {
  /** Copies its collections. */
  public Space {
    doorIds = List.copyOf(doorIds);
    environment = Set.copyOf(environment);
    movesWith = List.copyOf(movesWith);
    inModules = List.copyOf(inModules);
  }

  /** Where a point of the vehicle lies, in the frame of this space. */
  public SpacePointMm cornerOf(PointMm point) {
    return new SpacePointMm(
        point.xMm() - box.minXMm(), point.yMm() - box.minYMm(), point.zMm() - box.minZMm());
  }

  /** Where a corner in this space lies, in the frame of the vehicle. */
  public PointMm pointAt(SpacePointMm corner) {
    return new PointMm(
        box.minXMm() + corner.xMm(), box.minYMm() + corner.yMm(), box.minZMm() + corner.zMm());
  }
}
