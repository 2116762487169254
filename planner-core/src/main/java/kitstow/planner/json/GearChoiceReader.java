package kitstow.planner.json;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitstow.planner.geometry.Turn;
import kitstow.planner.model.Item;
import kitstow.planner.model.Need;
import kitstow.planner.model.Pin;
import kitstow.planner.model.SpacePointMm;
import kitstow.planner.problem.Code;

/** Reads the gear of a scenario: how many of what, how much it is wanted, and where. */
final class GearChoiceReader {
  private final Shelves shelves;
  private final Known known;

  GearChoiceReader(Shelves shelves, Known known) {
    this.shelves = shelves;
    this.known = known;
  }

  List<Item> read(Fields scenario) {
    List<Item> items = new ArrayList<>();
    for (Fields fields : scenario.objects("gear", 0, "list the gear, or write [] for none")) {
      item(fields).ifPresent(items::add);
    }
    if (!scenario.good("gear") && items.isEmpty()) {
      known.items.incomplete();
    }
    return items;
  }

  private Optional<Item> item(Fields fields) {
    Optional<Item> entry = shelves.gear().named(fields);
    String id = fields.idIfGiven("id").orElse(entry.map(Item::id).orElse(""));
    Place place = fields.has("id") ? fields.place("id") : fields.place("entry");
    int quantity = fields.wholeOr("quantity", Measure.QUANTITY, 1);
    Need need = fields.wordOr("need", Words.NEED, Need.MUST);
    int value = ChoiceFields.value(fields, need);
    Optional<String> group = fields.idIfGiven("group");
    Optional<String> title = fields.textIfGiven("title");
    Optional<Pin> pin = fields.objectIfGiven("pin").map(at -> pin(fields, at, entry, quantity));
    fields.doneBesideEntry("gear");
    if (id.isEmpty()) {
      known.items.incomplete();
      return Optional.empty();
    }
    known.keys.claim(id, place);
    known.items.add(id);
    Optional<Item> item =
        entry.map(
            gear ->
                new Item(
                    id,
                    title.orElse(gear.title()),
                    gear.entryId(),
                    gear.source(),
                    gear.shapes(),
                    gear.mass(),
                    gear.content(),
                    gear.turns(),
                    gear.bearsG(),
                    gear.keepClear(),
                    gear.marks(),
                    gear.reach(),
                    group,
                    need,
                    value,
                    quantity,
                    gear.growth(),
                    pin));
    item.ifPresent(known -> this.known.itemById.putIfAbsent(id, known));
    return item;
  }

  private Pin pin(Fields item, Fields fields, Optional<Item> entry, int quantity) {
    String space = fields.name("space", "name a space");
    if (fields.good("space")) {
      known.spaces.check(space, fields.place("space"));
    }
    Optional<SpacePointMm> corner = BoxFields.spaceCornerIfGiven(fields);
    Optional<Turn> turn = fields.wordIfGiven("turn", Words.TURN);
    fields.done();
    if (corner.isPresent() && quantity > 1 && item.good("quantity")) {
      fields.error(
          Code.PIN_CONTRADICTION,
          "cornerMm",
          "pins all " + quantity + " units to one place",
          "pin a space only, or list the units as items of their own");
    }
    if (turn.isPresent() && entry.isPresent() && !entry.get().turns().contains(turn.get())) {
      fields.error(
          Code.PIN_CONTRADICTION,
          "turn",
          "is " + turn.get().name() + ", which is none of the turns of the item",
          "pin one of its turns, or leave the turn out");
    }
    return new Pin(space, corner, turn);
  }
}
