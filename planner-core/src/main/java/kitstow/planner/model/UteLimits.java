package kitstow.planner.model;

import java.util.Optional;
import java.util.OptionalLong;

/**
 * Ratings on the plate and in the handbook, grams.
 *
 * @param gvmG gross vehicle mass
 * @param frontAxleG front axle limit
 * @param rearAxleG rear axle limit
 * @param gcmG gross combination mass; absent where the ute may not tow
 * @param brakedTowingG largest braked trailer
 * @param unbrakedTowingG largest unbraked trailer
 * @param ballG largest ball mass
 * @param cabRoof cab roof limits
 */
public record UteLimits(
    long gvmG,
    long frontAxleG,
    long rearAxleG,
    OptionalLong gcmG,
    OptionalLong brakedTowingG,
    OptionalLong unbrakedTowingG,
    OptionalLong ballG,
    Optional<RoofLimits> cabRoof) {}
