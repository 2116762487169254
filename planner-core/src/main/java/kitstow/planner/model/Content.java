package kitstow.planner.model;

/**
 * What an item holds that is used up on the trip.
 *
 * @param kind what it is
 * @param contentG how much of the item's mass it is when full, in grams
 */
public record Content(SupplyKind kind, long contentG) {}
