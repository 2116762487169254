package kitstow.planner.model;

import java.util.Optional;
import kitstow.planner.geometry.BoxMm;

/**
 * A fixed addition: bar, winch, tow bar, steps.
 *
 * @param id unique in the scenario
 * @param title shown to people
 * @param entryId catalogue entry; accessories of one entry share their error
 * @param source where its figures come from
 * @param mass its mass
 * @param box where it is, vehicle frame; its mass is spread over this length
 * @param roof the roof whose ledger it counts in, if any
 */
public record Accessory(
    String id,
    String title,
    String entryId,
    String source,
    KnownMass mass,
    BoxMm box,
    Optional<Zone> roof) {}
