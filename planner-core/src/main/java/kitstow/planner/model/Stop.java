package kitstow.planner.model;

import java.util.List;
import java.util.Set;

/**
 * Somewhere the ute may come to a stand where not everything opens: bogged, in traffic, beside a
 * bank. What lies in the cab or is lifted out of the open comes out anywhere.
 *
 * @param id unique in the scenario
 * @param title shown to people
 * @param shutSides sides to which no door opens and nothing pulls out or is taken out
 * @param shutBelowMm height above the ground in mm; what begins below it opens nowhere: doors by
 *     their sill, slides and open spaces by their floor; 0 if nothing is too low
 * @param shutDoorIds canopy doors that stay shut besides
 */
public record Stop(
    String id, String title, Set<Facing> shutSides, int shutBelowMm, List<String> shutDoorIds) {
  /** Copies its collections. */
  public Stop {
    shutSides = Set.copyOf(shutSides);
    shutDoorIds = List.copyOf(shutDoorIds);
  }
}
