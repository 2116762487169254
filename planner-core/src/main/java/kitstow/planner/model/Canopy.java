package kitstow.planner.model;

import java.util.List;
import java.util.Optional;
import kitstow.planner.geometry.SizeMm;

/**
 * A canopy and where it sits on the tray. Its body is spread over its length.
 *
 * @param id catalogue id
 * @param title shown to people
 * @param source where its figures come from
 * @param size outside length, width and height
 * @param mass its mass
 * @param inside clear inside, canopy frame
 * @param doors doors, canopy frame
 * @param roof roof limits, a ledger apart from the cab roof
 * @param liftOffLegs whether it has fittings for lift-off legs
 * @param bays bays, canopy frame
 * @param spaces spaces, canopy frame
 * @param fromTrayFrontMm its front face behind the tray's front edge
 */
public record Canopy(
    String id,
    String title,
    String source,
    SizeMm size,
    KnownMass mass,
    LocalBoxMm inside,
    List<Door> doors,
    Optional<RoofLimits> roof,
    boolean liftOffLegs,
    List<BaySpec> bays,
    List<SpaceSpec> spaces,
    int fromTrayFrontMm) {
  /** Copies its collections. */
  public Canopy {
    doors = List.copyOf(doors);
    bays = List.copyOf(bays);
    spaces = List.copyOf(spaces);
  }
}
