package kitstow.planner.model;

import java.util.List;
import java.util.Optional;
import kitstow.planner.geometry.BoxMm;

/**
 * A tank in its place.
 *
 * @param tank the tank
 * @param box its inside, vehicle frame
 * @param moduleId the module it is in, if any
 * @param movesWith ids of the modules whose slides carry it
 * @param inModules ids of the modules it is in
 */
public record FittedTank(
    Tank tank,
    BoxMm box,
    Optional<String> moduleId,
    List<String> movesWith,
    List<String> inModules) {
  /** Copies its collections. */
  public FittedTank {
    movesWith = List.copyOf(movesWith);
    inModules = List.copyOf(inModules);
  }
}
