package kitstow.planner.model;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A region of ute, tray, canopy or module that can hold one module, as its host describes it.
 *
 * @param id unique in its host
 * @param title shown to people
 * @param box in the frame of the host
 * @param facing the side it opens to; a bay on a module faces where the module faces
 * @param doorIds canopy doors in front of it; a bay on a module takes those of the module's bay
 * @param ratings what may stand in it, module included (a drawer deck, a shelf)
 * @param moves whether it rides on the moving part of its host module
 * @param zone part of the vehicle; a bay on a module takes that of the module's bay
 * @param environment air and walls
 * @param ownAir whether it has sealed air of its own
 * @param spaceWhenEmpty whether gear may stand in it when no module does: with the smaller bays in
 *     it as one space as long as no module reaches in, else in what those are
 */
public record BaySpec(
    String id,
    String title,
    LocalBoxMm box,
    Facing facing,
    List<String> doorIds,
    Optional<Ratings> ratings,
    boolean moves,
    Zone zone,
    Set<Environment> environment,
    boolean ownAir,
    boolean spaceWhenEmpty) {
  /** Copies its collections. */
  public BaySpec {
    doorIds = List.copyOf(doorIds);
    environment = Set.copyOf(environment);
  }
}
