package kitstow.planner.model;

import kitstow.planner.geometry.Turn;

/**
 * Where one unit of an item stands.
 *
 * @param itemId item
 * @param unit 1 to the item's quantity
 * @param spaceId resolved space id
 * @param shape index into the item's shapes
 * @param turn how it stands
 * @param corner its front, left, lower corner relative to the space
 */
public record Placement(
    String itemId, int unit, String spaceId, int shape, Turn turn, SpacePointMm corner) {}
