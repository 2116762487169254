package kitstow.planner.trip;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.model.Growth;
import kitstow.planner.model.Leg;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;

/** A placed unit that gains mass: rubbish day by day up to its most, canvas while a leg is wet. */
final class Growing {
  private final int body;
  private final PlacedItem placed;
  private final Growth growth;
  private final int people;
  private double grownG;
  private double rateG;
  private long wetG;

  private Growing(int body, PlacedItem placed, Growth growth, int people) {
    this.body = body;
    this.placed = placed;
    this.growth = growth;
    this.people = people;
  }

  static List<Growing> of(Loading loading) {
    int people = loading.scenario().trip().people().size();
    List<Growing> all = new ArrayList<>();
    for (PlacedItem placed : loading.placed().values()) {
      placed
          .item()
          .growth()
          .ifPresent(
              growth ->
                  all.add(new Growing(loading.indexOf(placed.key()), placed, growth, people)));
    }
    return all;
  }

  /** Leaves behind what was gained day by day. */
  void empty() {
    grownG = 0.0;
  }

  void startLeg(Leg leg) {
    rateG = growth.perPersonDayG() * people * leg.days();
    wetG = leg.wet() ? growth.wetG() : 0L;
  }

  /** Share of a leg until it has gained its most; infinite once it has. */
  double fullIn() {
    boolean grows = rateG > 0.0 && grownG < growth.upToG();
    return grows ? (growth.upToG() - grownG) / rateG : Double.POSITIVE_INFINITY;
  }

  /** Returns whether it has reached its most in this step. */
  boolean advance(double step) {
    if (!(fullIn() < Double.POSITIVE_INFINITY)) {
      return false;
    }
    grownG += rateG * step;
    boolean full = grownG > growth.upToG() - Store.TINY_G;
    if (full) {
      grownG = growth.upToG();
    }
    return full;
  }

  int body() {
    return body;
  }

  String key() {
    return placed.key();
  }

  String title() {
    return placed.item().title();
  }

  double gainG() {
    return grownG + wetG;
  }
}
