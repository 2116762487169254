package kitstow.planner.model;

import java.util.List;
import java.util.Optional;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.PointMm;
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

  /** Its frame on a tray. */
  HostFrame frameOn(Tray tray) {
    return new HostFrame.Moved(tray.frontXMm() + fromTrayFrontMm, 0, tray.deckZMm());
  }

  /** Its outside on a tray, vehicle frame. */
  public BoxMm outsideOn(Tray tray) {
    return BoxMm.at(
        new PointMm(tray.frontXMm() + fromTrayFrontMm, -size.widthMm() / 2, tray.deckZMm()), size);
  }

  /** Its clear inside on a tray, vehicle frame. */
  public BoxMm insideOn(Tray tray) {
    return frameOn(tray).toVehicle(inside);
  }
}
