package kitstow.planner.model;

import java.util.List;
import java.util.Optional;
import kitstow.planner.geometry.SizeMm;

/**
 * A tray and where it sits. Its body is spread over its length.
 *
 * @param id catalogue id
 * @param title shown to people
 * @param source where its figures come from
 * @param size outside length, width and depth of the deck structure
 * @param mass its mass
 * @param rating what the tray may carry, canopy included
 * @param headboardHeightMm headboard above the deck
 * @param bays bays on or under it, tray frame
 * @param spaces spaces on or under it, tray frame
 * @param frontXMm x of its front edge in the vehicle frame
 * @param deckZMm height of the deck above the ground
 */
public record Tray(
    String id,
    String title,
    String source,
    SizeMm size,
    KnownMass mass,
    Optional<Ratings> rating,
    int headboardHeightMm,
    List<BaySpec> bays,
    List<SpaceSpec> spaces,
    int frontXMm,
    int deckZMm) {
  /** Copies its collections. */
  public Tray {
    bays = List.copyOf(bays);
    spaces = List.copyOf(spaces);
  }
}
