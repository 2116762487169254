package kitstow.planner.trip;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import kitstow.planner.model.SupplyKind;
import kitstow.planner.model.SupplyOrder;

/**
 * One kind of supply being used: the first group that holds any is open and drains in proportion to
 * what is in it, so that its containers run out together. Fuel is burnt from tanks only.
 */
final class Drain {
  private final SupplyKind kind;
  private final List<Store> inOrder = new ArrayList<>();
  private final List<List<Store>> drawn = new ArrayList<>();
  private final Decanting decanting;
  private List<Store> open = List.of();
  private double demand;
  private double used;
  private double missing;
  private double startG;

  Drain(SupplyKind kind, List<List<Store>> groups, SupplyOrder.Decant rule) {
    this.kind = kind;
    this.decanting = new Decanting(rule, kind == SupplyKind.FUEL ? groups : List.<List<Store>>of());
    for (List<Store> group : groups) {
      inOrder.addAll(group);
      List<Store> from = new ArrayList<>();
      for (Store store : group) {
        if (store.isTank() || kind != SupplyKind.FUEL) {
          from.add(store);
        }
      }
      drawn.add(from);
    }
  }

  static Drain of(SupplyKind kind, Stores stores, List<SupplyOrder> orders) {
    SupplyOrder.Decant rule = SupplyOrder.Decant.EARLY;
    for (SupplyOrder order : orders) {
      if (order.kind() == kind) {
        rule = order.decant();
      }
    }
    return new Drain(kind, stores.inOrder(kind, orders), rule);
  }

  /** Fills up before a leg: to the start of the trip, or by an amount in order of use. */
  void fill(OptionalLong addG) {
    if (addG.isPresent()) {
      double left = addG.getAsLong();
      for (Store store : inOrder) {
        left -= store.add(left);
      }
    } else {
      inOrder.forEach(Store::refill);
    }
  }

  void startLeg(double unitsPerLeg) {
    demand = unitsPerLeg;
    used = 0.0;
    missing = 0.0;
    startG = contentG();
  }

  /** Opens the first group that holds anything and closes the rest. */
  void open() {
    open = List.of();
    for (List<Store> group : drawn) {
      double units = unitsOf(group);
      boolean opens = open.isEmpty() && units > 0.0 && demand > 0.0;
      for (Store store : group) {
        store.draw(opens ? demand * store.units() / units : 0.0);
      }
      if (opens) {
        open = group;
      }
    }
  }

  /** Share of a leg until the open group is empty. */
  double emptyIn() {
    return open.isEmpty() ? Double.POSITIVE_INFINITY : unitsOf(open) / demand;
  }

  void advance(double step) {
    if (open.isEmpty()) {
      missing += demand * step;
    } else {
      used += demand * step;
      for (Store store : open) {
        store.advance(step);
      }
    }
  }

  /** What the open group has just run out of; empty while it still holds anything. */
  List<Store> ranOut() {
    if (unitsOf(open) > 0.0) {
      return List.of();
    }
    List<Store> emptied = new ArrayList<>();
    for (Store store : open) {
      if (store.rateG() > 0.0) {
        emptied.add(store);
      }
    }
    return emptied;
  }

  /** Whether no container can give any more. */
  boolean isOut() {
    for (List<Store> group : drawn) {
      if (unitsOf(group) > 0.0) {
        return false;
      }
    }
    return !due().isPresent();
  }

  Optional<Decanting.Transfer> due() {
    return decanting.due();
  }

  double nextEventIn() {
    return Math.min(emptyIn(), decanting.dueIn());
  }

  /** What is left, in units of demand; a can counts as it would in the first tank. */
  double unitsLeft() {
    double canUnitG = kind == SupplyKind.FUEL ? firstTankUnitG() : 1.0;
    double units = 0.0;
    for (Store store : inOrder) {
      units += store.contentG() / (store.isTank() ? store.unitG() : canUnitG);
    }
    return units;
  }

  private double firstTankUnitG() {
    for (Store store : inOrder) {
      if (store.isTank()) {
        return store.unitG();
      }
    }
    return Double.POSITIVE_INFINITY;
  }

  private static double unitsOf(List<Store> group) {
    double units = 0.0;
    for (Store store : group) {
      units += store.units();
    }
    return units;
  }

  double contentG() {
    double massG = 0.0;
    for (Store store : inOrder) {
      massG += store.contentG();
    }
    return massG;
  }

  SupplyKind kind() {
    return kind;
  }

  boolean isIdle() {
    return demand <= 0.0 && inOrder.isEmpty();
  }

  double demand() {
    return demand;
  }

  double used() {
    return used;
  }

  double missing() {
    return missing;
  }

  /** Content when the leg began, grams. */
  double startG() {
    return startG;
  }
}
