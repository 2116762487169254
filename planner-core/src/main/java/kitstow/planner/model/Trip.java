package kitstow.planner.model;

import java.util.List;

/** Who travels, over which legs, using what. */
public record Trip(
    List<Person> people, List<Leg> legs, Consumption consumption, List<SupplyOrder> orders) {
  /** Copies its collections. */
  public Trip {
    people = List.copyOf(people);
    legs = List.copyOf(legs);
    orders = List.copyOf(orders);
  }
}
