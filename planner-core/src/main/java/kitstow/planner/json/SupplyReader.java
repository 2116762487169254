package kitstow.planner.json;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kitstow.planner.model.Content;
import kitstow.planner.model.Item;
import kitstow.planner.model.SupplyKind;
import kitstow.planner.model.SupplyOrder;
import kitstow.planner.model.Tank;
import kitstow.planner.problem.Code;

/** Reads in which order tanks and containers are used up. */
final class SupplyReader {
  private final Faults faults;
  private final Known known;

  SupplyReader(Faults faults, Known known) {
    this.faults = faults;
    this.known = known;
  }

  List<SupplyOrder> read(Fields trip) {
    List<SupplyOrder> orders = new ArrayList<>();
    Set<SupplyKind> kinds = EnumSet.noneOf(SupplyKind.class);
    for (Fields fields : trip.objectsIfGiven("supplies")) {
      SupplyKind kind = fields.word("kind", Words.SUPPLY);
      if (fields.good("kind") && !kinds.add(kind)) {
        fields.error(
            Code.LISTED_TWICE,
            "kind",
            "is a second order for " + Words.of(kind),
            "put all its containers into one order");
      }
      List<List<String>> groups = groups(fields, kind);
      SupplyOrder.Decant decant = fields.wordOr("decant", Words.DECANT, SupplyOrder.Decant.EARLY);
      fields.done();
      orders.add(new SupplyOrder(kind, groups, decant));
    }
    return orders;
  }

  private List<List<String>> groups(Fields fields, SupplyKind kind) {
    List<List<String>> groups = new ArrayList<>();
    Set<String> used = new HashSet<>();
    String hint = "list groups of names, e.g. [[\"main-tank\"], [\"can\"]]";
    for (Node group : fields.entries("order", /* least= */ 1, hint)) {
      List<String> names = new ArrayList<>();
      for (Node entry : Values.list(group, /* least= */ 1, faults)) {
        String name = Values.text(entry, faults);
        names.add(name);
        if (!faults.anyIn(entry.place())) {
          check(name, entry.place(), kind, fields.good("kind"));
          checkOnce(name, entry.place(), used);
        }
      }
      groups.add(names);
    }
    return groups;
  }

  /** A name may stand in one place only; all units of an item include each of them. */
  private void checkOnce(String name, Place place, Set<String> used) {
    int sign = name.indexOf('#');
    boolean again =
        sign < 0
            ? used.contains(name) || used.contains(name + "#")
            : used.contains(name) || used.contains(name.substring(0, sign));
    if (again && !faults.anyIn(place)) {
      faults.error(
          Code.LISTED_TWICE,
          place,
          "is " + Shown.quoted(name) + ", which stands in this order before",
          "list each container once");
    }
    used.add(name);
    if (sign > 0) {
      used.add(name.substring(0, sign + 1));
    }
  }

  private void check(String name, Place place, SupplyKind kind, boolean kindIsGood) {
    Optional<Tank> tank = Optional.ofNullable(known.tankById.get(name));
    if (tank.isPresent()) {
      if (kindIsGood && tank.get().kind() != kind) {
        wrong(place, "is a tank for " + Words.of(tank.get().kind()), kind);
      }
      return;
    }
    int sign = name.indexOf('#');
    String itemId = sign < 0 ? name : name.substring(0, sign);
    if (!known.items.has(itemId)) {
      known.containers().check(name, place);
      return;
    }
    Item item = known.itemById.get(itemId);
    if (item == null) {
      return;
    }
    if (sign >= 0 && !hasUnit(item, name)) {
      faults.error(
          Code.NO_SUCH_UNIT_OR_SHAPE,
          place,
          "is "
              + Shown.quoted(name)
              + ", must name one of the item's "
              + item.quantity()
              + " units",
          item.quantity() == 1
              ? "name it " + item.id()
              : "name a unit from " + item.keyOf(1) + " to " + item.keyOf(item.quantity()));
      return;
    }
    Optional<SupplyKind> holds = item.content().map(Content::kind);
    if (kindIsGood && (!holds.isPresent() || holds.get() != kind)) {
      String fact = holds.map(held -> "is an item with " + Words.of(held)).orElse("holds nothing");
      wrong(place, fact, kind);
    }
  }

  private static boolean hasUnit(Item item, String key) {
    for (int unit = 1; unit <= item.quantity(); unit++) {
      if (item.quantity() > 1 && item.keyOf(unit).equals(key)) {
        return true;
      }
    }
    return false;
  }

  private void wrong(Place place, String fact, SupplyKind kind) {
    faults.error(
        Code.WRONG_SUPPLY,
        place,
        fact + ", must hold " + Words.of(kind),
        "name something that holds " + Words.of(kind) + ", or give the item a \"content\"");
  }
}
