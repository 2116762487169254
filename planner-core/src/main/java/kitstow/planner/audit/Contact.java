package kitstow.planner.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A rectangle in which an item rests on something of its space.
 *
 * @param below the item beneath it; none for the floor
 * @param x along the vehicle
 * @param y across it
 */
record Contact(Optional<AuditedItem> below, Span x, Span y) {
  /** All that an item rests on: the floor where it stands on it, and the items right beneath. */
  static List<Contact> beneath(AuditedItem item, List<AuditedItem> spaceful) {
    List<Contact> contacts = new ArrayList<>();
    Block floor = Block.of(item.space().box());
    if (item.block().z().fromMm() == floor.z().fromMm() && item.block().sharesPlan(floor)) {
      contacts.add(between(Optional.empty(), floor, item.block()));
    }
    for (AuditedItem other : spaceful) {
      if (other.differsFrom(item) && item.standsOn(other)) {
        contacts.add(between(Optional.of(other), other.block(), item.block()));
      }
    }
    return contacts;
  }

  private static Contact between(Optional<AuditedItem> below, Block lower, Block upper) {
    return new Contact(below, lower.x().common(upper.x()), lower.y().common(upper.y()));
  }

  /** Total area of contacts. */
  static long areaMm2(List<Contact> contacts) {
    long sumMm2 = 0L;
    for (Contact contact : contacts) {
      sumMm2 += contact.areaMm2();
    }
    return sumMm2;
  }

  long areaMm2() {
    return (long) x.lengthMm() * y.lengthMm();
  }
}
