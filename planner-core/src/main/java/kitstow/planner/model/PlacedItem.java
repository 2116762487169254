package kitstow.planner.model;

import kitstow.planner.geometry.BoxMm;

/**
 * One unit of an item in its place.
 *
 * @param item the item
 * @param unit its unit, from 1
 * @param key its body key
 * @param space the space it is in
 * @param placement the plan's line for it
 * @param box where it stands with everything closed, vehicle frame
 */
public record PlacedItem(
    Item item, int unit, String key, Space space, Placement placement, BoxMm box) {
  /** Whether this is the same unit of the same item. */
  public boolean is(PlacedItem other) {
    return key.equals(other.key);
  }
}
