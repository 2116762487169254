package kitstow.planner.packing;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.Boxes;
import kitstow.planner.geometry.ContactHull;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Space;

/**
 * What one item stands on: the floor of its space, other items, or both.
 *
 * @param item the item
 * @param floorMm2 contact with the floor
 * @param items contacts with items
 * @param totalMm2 all contact
 * @param centreHeld whether the centre of its base lies over the hull of the contacts
 */
public record Contacts(
    PlacedItem item, long floorMm2, List<Contact> items, long totalMm2, boolean centreHeld) {

  /** Contact with one item beneath. */
  public record Contact(PlacedItem below, long areaMm2) {}

  /** Copies its collections. */
  public Contacts {
    items = List.copyOf(items);
  }

  /** Contacts of an item in its space. */
  public static Contacts of(PlacedItem item, Space space, List<PlacedItem> inSpace) {
    BoxMm box = item.box();
    List<Contact> below = new ArrayList<>();
    List<BoxMm> supports = new ArrayList<>();
    long floor = 0L;
    if (box.minZMm() == space.box().minZMm()) {
      floor = Boxes.footprintOverlapMm2(box, space.box());
      supports.add(space.box());
    }
    long total = floor;
    for (PlacedItem other : inSpace) {
      if (!other.is(item) && other.box().maxZMm() == box.minZMm()) {
        long area = Boxes.footprintOverlapMm2(box, other.box());
        if (area > 0L) {
          below.add(new Contact(other, area));
          supports.add(other.box());
          total += area;
        }
      }
    }
    return new Contacts(item, floor, below, total, ContactHull.holdsCentre(box, supports));
  }

  /** Supported share of the base, per mille, rounded down. */
  public long supportedPermille() {
    return totalMm2 * 1000L / Boxes.footprintMm2(item.box());
  }

  /** Whether enough of the base is supported with the centre over it. */
  public boolean supported(int leastPermille) {
    return totalMm2 * 1000L >= leastPermille * Boxes.footprintMm2(item.box()) && centreHeld;
  }
}
