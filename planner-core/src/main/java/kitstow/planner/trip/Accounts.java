package kitstow.planner.trip;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import kitstow.planner.model.Leg;
import kitstow.planner.model.SupplyKind;

/** Notes at the end of each leg what was used, what is left and what was missing. */
final class Accounts {
  private final List<Stock> stocks = new ArrayList<>();
  private final List<Shortfall> shortfalls = new ArrayList<>();

  List<Stock> stocks() {
    return stocks;
  }

  List<Shortfall> shortfalls() {
    return shortfalls;
  }

  /**
   * Closes a leg for one kind of supply, which had nothing left from a moment on, if it ran out.
   */
  void close(Leg leg, Drain drain, Moment out) {
    if (drain.isIdle()) {
      return;
    }
    boolean fuel = drain.kind() == SupplyKind.FUEL;
    stocks.add(
        new Stock(
            drain.kind(),
            leg.id(),
            Math.round(drain.startG()),
            Math.round(drain.contentG()),
            Math.round(drain.used()),
            Math.round(drain.unitsLeft()),
            fuel ? OptionalDouble.empty() : lasts(drain, leg.days()),
            fuel ? lasts(drain, leg.distanceKm()) : OptionalDouble.empty()));
    long missing = Math.round(drain.missing());
    if (missing > 0L) {
      shortfalls.add(new Shortfall(drain.kind(), leg.id(), missing, out));
    }
  }

  /** How much longer or farther the rest would last at the rate of a leg of this extent. */
  private static OptionalDouble lasts(Drain drain, double extent) {
    return drain.demand() > 0.0
        ? OptionalDouble.of(drain.unitsLeft() / drain.demand() * extent)
        : OptionalDouble.empty();
  }
}
