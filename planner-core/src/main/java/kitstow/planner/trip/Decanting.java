package kitstow.planner.trip;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitstow.planner.model.SupplyOrder;

/**
 * Emptying fuel cans into tanks, whole cans in their order: a can waits for the one before it. A
 * can that no tank could ever hold is passed over.
 */
final class Decanting {
  private final SupplyOrder.Decant rule;
  private final List<Store> cans = new ArrayList<>();
  private final List<Store> tanks = new ArrayList<>();

  Decanting(SupplyOrder.Decant rule, List<List<Store>> groups) {
    this.rule = rule;
    for (List<Store> group : groups) {
      for (Store store : group) {
        (store.isTank() ? tanks : cans).add(store);
      }
    }
  }

  /** A can and the tank it goes into. */
  record Transfer(Store can, Store tank) {
    void carryOut() {
      can.pourInto(tank);
    }
  }

  /** What is to be emptied now, if anything. */
  Optional<Transfer> due() {
    for (Store can : next()) {
      for (Store tank : tanks) {
        if (mayPour() && tank.roomG() >= can.contentG() - Store.TINY_G) {
          return Optional.of(new Transfer(can, tank));
        }
      }
    }
    return Optional.empty();
  }

  /** Share of a leg until the next can fits at the present rates; infinite if it never does. */
  double dueIn() {
    double soonest = Double.POSITIVE_INFINITY;
    if (rule == SupplyOrder.Decant.WHEN_EMPTY) {
      return soonest;
    }
    for (Store can : next()) {
      for (Store tank : tanks) {
        if (tank.rateG() > 0.0 && tank.couldHold(can.contentG())) {
          soonest = Math.min(soonest, (can.contentG() - tank.roomG()) / tank.rateG());
        }
      }
    }
    return Math.max(0.0, soonest);
  }

  private boolean mayPour() {
    return switch (rule) {
      case EARLY -> true;
      case WHEN_EMPTY -> tanks.stream().allMatch(Store::isEmpty);
    };
  }

  /** The next can, or none. */
  private List<Store> next() {
    for (Store can : cans) {
      if (!can.isEmpty()) {
        for (Store tank : tanks) {
          if (tank.couldHold(can.contentG())) {
            return List.of(can);
          }
        }
      }
    }
    return List.of();
  }
}
