package kitstow.planner.trip;

import kitstow.planner.model.Content;
import kitstow.planner.model.FittedTank;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.ShiftMm;
import kitstow.planner.model.SupplyKind;
import kitstow.planner.model.Tank;

/**
 * A tank, or a placed unit of gear with a content. Holds grams; what is asked of it comes in units
 * of demand, which are millilitres for fuel and water and grams for food and gas.
 */
final class Store {
  /** Less than this counts as nothing; far below the gram that states are rounded to. */
  static final double TINY_G = 1.0e-6;

  private final int body;
  private final String key;
  private final String title;
  private final SupplyKind kind;
  private final boolean tank;
  private final double capacityG;
  private final double startG;
  private final double unitG;
  private final int heightMm;
  private double contentG;
  private double rateG;

  private Store(
      int body,
      String key,
      String title,
      SupplyKind kind,
      boolean tank,
      double capacityG,
      double startG,
      double unitG,
      int heightMm) {
    this.body = body;
    this.key = key;
    this.title = title;
    this.kind = kind;
    this.tank = tank;
    this.capacityG = capacityG;
    this.startG = startG;
    this.unitG = unitG;
    this.heightMm = heightMm;
    this.contentG = startG;
  }

  static Store of(int body, FittedTank fitted) {
    Tank tank = fitted.tank();
    double gramsPerMl = tank.densityGPerL() / 1000.0;
    double unitG =
        switch (tank.kind()) {
          case FUEL, WATER -> gramsPerMl;
          case FOOD, GAS -> 1.0;
        };
    return new Store(
        body,
        tank.id(),
        tank.title(),
        tank.kind(),
        /* tank= */ true,
        tank.capacityMl() * gramsPerMl,
        tank.startMl() * gramsPerMl,
        unitG,
        fitted.box().heightMm());
  }

  static Store of(int body, PlacedItem placed, Content content) {
    boolean single = placed.item().quantity() == 1;
    return new Store(
        body,
        placed.key(),
        single ? placed.item().title() : placed.item().title() + " " + placed.unit(),
        content.kind(),
        /* tank= */ false,
        content.contentG(),
        content.contentG(),
        /* unitG= */ 1.0,
        /* heightMm= */ 0);
  }

  /** Draws evenly from now on, in units of demand for a whole leg; zero closes it. */
  void draw(double unitsPerLeg) {
    rateG = unitsPerLeg * unitG;
  }

  void advance(double step) {
    contentG -= rateG * step;
    if (contentG < TINY_G) {
      contentG = 0.0;
    }
  }

  /** Adds up to its capacity and returns what it took. */
  double add(double massG) {
    double taken = Math.max(0.0, Math.min(massG, capacityG - contentG));
    contentG += taken;
    return taken;
  }

  /** Fills to the content it had when the trip began, never taking any out. */
  void refill() {
    contentG = Math.max(contentG, startG);
  }

  /** Empties itself whole into another. */
  void pourInto(Store other) {
    other.contentG += contentG;
    contentG = 0.0;
  }

  boolean isEmpty() {
    return contentG <= 0.0;
  }

  /** Room left in grams. */
  double roomG() {
    return capacityG - contentG;
  }

  /** Whether it could take a mass if it were empty. */
  boolean couldHold(double massG) {
    return capacityG + TINY_G >= massG;
  }

  /** Where the content has sunk to; gear keeps its box, a tank fills from the bottom. */
  ShiftMm shift() {
    if (!tank || contentG >= capacityG) {
      return ShiftMm.NONE;
    }
    double fraction = contentG / capacityG;
    return new ShiftMm(0, 0, -(1.0 - fraction) * heightMm / 2.0);
  }

  int body() {
    return body;
  }

  String key() {
    return key;
  }

  String title() {
    return title;
  }

  SupplyKind kind() {
    return kind;
  }

  boolean isTank() {
    return tank;
  }

  double contentG() {
    return contentG;
  }

  double rateG() {
    return rateG;
  }

  /** Grams in one unit of demand. */
  double unitG() {
    return unitG;
  }

  /** Content in units of demand. */
  double units() {
    return unitG > 0.0 ? contentG / unitG : 0.0;
  }
}
