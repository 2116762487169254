package kitstow.planner.model;

/**
 * What a roof may carry in grams, racks and tents included.
 *
 * @param movingG while driving on the road; off the road the settings derate it
 * @param parkedG while standing, sleepers included
 */
public record RoofLimits(long movingG, long parkedG) {}
