package kitstow.tui.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitstow.planner.model.Item;
import kitstow.planner.model.RemovablePart;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.Trip;

/** The gear list with a piece more or less. */
public final class Gear {
  private Gear() {}

  /**
   * With pieces more, at home at first; what is in them is used up last on the trip.
   *
   * @param pieces pieces whose ids may be taken already
   */
  public static Design with(Design design, List<Item> pieces) {
    Scenario scenario = design.scenario();
    for (Item piece : pieces) {
      Item one = named(piece, Ids.free(scenario, piece.id()));
      List<Item> items = new ArrayList<>(scenario.items());
      items.add(one);
      Trip trip = Supplies.with(scenario.trip(), one);
      scenario = scenario.withItems(items).withTrip(scenario.trailers(), trip);
    }
    return new Design(scenario, design.plan());
  }

  private static Item named(Item item, String id) {
    return new Item(
        id,
        item.title(),
        item.entryId(),
        item.source(),
        item.shapes(),
        item.mass(),
        item.content(),
        item.turns(),
        item.bearsG(),
        item.keepClear(),
        item.marks(),
        item.reach(),
        item.group(),
        item.need(),
        item.value(),
        item.quantity(),
        item.growth(),
        item.pin());
  }

  /** Without a piece; the trip uses up nothing of it any more. */
  public static Design without(Design design, Item piece) {
    Scenario scenario = design.scenario();
    List<Item> items = new ArrayList<>(scenario.items());
    items.removeIf(one -> one.id().equals(piece.id()));
    Trip trip = Supplies.without(scenario.trip(), name -> Supplies.names(name, piece.id()));
    return Tidy.plan(scenario.withItems(items).withTrip(scenario.trailers(), trip), design.plan());
  }

  /** Why a piece cannot be removed. */
  public static Optional<String> needed(Scenario scenario, Item piece) {
    for (RemovablePart part : scenario.ute().parts()) {
      if (part.stowedAsItemId().filter(piece.id()::equals).isPresent()) {
        return Optional.of("it is a part of the ute that is stowed");
      }
    }
    return Optional.empty();
  }
}
