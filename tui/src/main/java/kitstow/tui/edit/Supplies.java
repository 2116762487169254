package kitstow.tui.edit;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import kitstow.planner.model.Item;
import kitstow.planner.model.Leg;
import kitstow.planner.model.SupplyKind;
import kitstow.planner.model.SupplyOrder;
import kitstow.planner.model.Trip;

/** What a trip uses up, with a container more or less. */
final class Supplies {
  private Supplies() {}

  /** With what is in an item used up last; the same trip where there is nothing in it. */
  static Trip with(Trip trip, Item item) {
    return item.content().map(content -> with(trip, content.kind(), item.id())).orElse(trip);
  }

  /** With a container used up last of its kind. */
  static Trip with(Trip trip, SupplyKind kind, String container) {
    List<SupplyOrder> orders = new ArrayList<>();
    boolean added = false;
    for (SupplyOrder order : trip.orders()) {
      if (order.kind() == kind) {
        List<List<String>> groups = new ArrayList<>(order.groups());
        groups.add(List.of(container));
        orders.add(new SupplyOrder(kind, groups, order.decant()));
        added = true;
      } else {
        orders.add(order);
      }
    }
    if (!added) {
      orders.add(new SupplyOrder(kind, List.of(List.of(container)), SupplyOrder.Decant.EARLY));
    }
    return new Trip(trip.people(), trip.legs(), trip.consumption(), orders);
  }

  /** Without some containers; what nothing is left of is no more filled up on the way. */
  static Trip without(Trip trip, Predicate<String> container) {
    List<SupplyOrder> orders = new ArrayList<>();
    Set<SupplyKind> kinds = EnumSet.noneOf(SupplyKind.class);
    for (SupplyOrder order : trip.orders()) {
      List<List<String>> groups = new ArrayList<>();
      for (List<String> group : order.groups()) {
        List<String> rest = group.stream().filter(container.negate()).toList();
        if (!rest.isEmpty()) {
          groups.add(rest);
        }
      }
      if (!groups.isEmpty()) {
        orders.add(new SupplyOrder(order.kind(), groups, order.decant()));
        kinds.add(order.kind());
      }
    }
    List<Leg> legs = new ArrayList<>();
    for (Leg leg : trip.legs()) {
      legs.add(
          leg.filling(leg.resupply().stream().filter(one -> kinds.contains(one.kind())).toList()));
    }
    return new Trip(trip.people(), legs, trip.consumption(), orders);
  }

  /** Whether a name in an order of use stands for an item or one of its units. */
  static boolean names(String container, String itemId) {
    return container.equals(itemId) || container.startsWith(itemId + "#");
  }
}
