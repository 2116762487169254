package kitstow.tui.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.Item;
import kitstow.planner.model.KnownMass;
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
      Item one = piece.renamed(Ids.free(scenario, piece.id()));
      List<Item> items = new ArrayList<>(scenario.items());
      items.add(one);
      Trip trip = Supplies.with(scenario.trip(), one);
      scenario = scenario.withItems(items).withTrip(scenario.trailers(), trip);
    }
    return new Design(scenario, design.plan());
  }

  /**
   * With the pieces of a table: what has the id of a piece takes that one's figures, all else is
   * added. What a table has no column for stays as it was: room kept clear, growth, pin, further
   * shapes.
   */
  public static Design merged(Design design, List<Item> table) {
    List<Item> items = new ArrayList<>();
    List<Item> rest = new ArrayList<>(table);
    for (Item old : design.scenario().items()) {
      Optional<Item> row = table.stream().filter(one -> one.id().equals(old.id())).findFirst();
      row.ifPresent(rest::remove);
      items.add(row.map(one -> renewed(old, one)).orElse(old));
    }
    return with(Tidy.plan(design.scenario().withItems(items), design.plan()), rest);
  }

  private static Item renewed(Item old, Item row) {
    List<SizeMm> shapes = new ArrayList<>(old.shapes());
    shapes.set(0, row.shapes().get(0));
    KnownMass mass = Words.mass(row.mass().massG(), row.mass().source(), Optional.of(old.mass()));
    boolean same =
        mass.equals(old.mass())
            && shapes.equals(old.shapes())
            && row.content().equals(old.content())
            && row.turns().equals(old.turns())
            && row.bearsG() == old.bearsG()
            && row.marks().equals(old.marks())
            && row.reach() == old.reach();
    return new Item(
        old.id(),
        row.title(),
        same ? old.entryId() : row.entryId(),
        same ? old.source() : row.source(),
        shapes,
        mass,
        row.content(),
        row.turns(),
        row.bearsG(),
        old.keepClear(),
        row.marks(),
        row.reach(),
        row.group(),
        row.need(),
        row.value(),
        row.quantity(),
        old.growth(),
        old.pin());
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
