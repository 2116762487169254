package kitstow.planner.model;

import java.util.Optional;
import kitstow.planner.geometry.BoxMm;

/**
 * A part of the ute that can come off: factory spare, rear seat, tub.
 *
 * @param id unique in the scenario
 * @param title shown to people
 * @param mass its mass
 * @param box where it sits when on, vehicle frame
 * @param state on, off, or stowed as an item of the gear list
 * @param stowedAsItemId the item that stands for it when stowed
 */
public record RemovablePart(
    String id,
    String title,
    KnownMass mass,
    BoxMm box,
    PartState state,
    Optional<String> stowedAsItemId) {}
