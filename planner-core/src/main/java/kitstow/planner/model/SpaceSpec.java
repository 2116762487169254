package kitstow.planner.model;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A space as its host describes it.
 *
 * @param id unique in its host
 * @param title shown to people
 * @param box in the frame of the host
 * @param ratings what it may hold
 * @param access from where it is filled
 * @param doorIds canopy doors in the way of filling it; a module's spaces take those of its bay
 * @param moves whether it rides on the moving part of its module
 * @param zone part of the vehicle; a module's spaces take that of its bay
 * @param environment air and walls
 * @param ownAir whether it has sealed air of its own
 * @param bars bars beneath it, for roofs and side racks
 */
public record SpaceSpec(
    String id,
    String title,
    LocalBoxMm box,
    Optional<Ratings> ratings,
    AccessAxis access,
    List<String> doorIds,
    boolean moves,
    Zone zone,
    Set<Environment> environment,
    boolean ownAir,
    Optional<RoofBars> bars) {
  /** Copies its collections. */
  public SpaceSpec {
    doorIds = List.copyOf(doorIds);
    environment = Set.copyOf(environment);
  }
}
