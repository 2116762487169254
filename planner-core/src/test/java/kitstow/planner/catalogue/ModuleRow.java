package kitstow.planner.catalogue;

import static kitstow.planner.catalogue.Basis.COMMON_PRACTICE;
import static kitstow.planner.catalogue.Basis.OUR_CHOICE;

/** The ranges of one module; sizes are depth, across the opening, height. */
final class ModuleRow extends EntryRanges {
  ModuleRow(String id) {
    super(id);
  }

  /** Outside as the trade gives it. */
  ModuleRow outside(int depthMm, int acrossMm, int heightMm) {
    return box("", depthMm, acrossMm, heightMm, COMMON_PRACTICE);
  }

  /** Outside where the trade gives none or only part. */
  ModuleRow chosenOutside(int depthMm, int acrossMm, int heightMm, String why) {
    return box("", depthMm, acrossMm, heightMm, OUR_CHOICE + ": " + why);
  }

  /** Outside of a long thing of which the trade gives a range. */
  ModuleRow outside(Range depthMm, Range acrossMm, Range heightMm) {
    with("depthMm", depthMm.min(), depthMm.max(), depthMm.basis());
    with("acrossMm", acrossMm.min(), acrossMm.max(), acrossMm.basis());
    with("heightMm", heightMm.min(), heightMm.max(), heightMm.basis());
    return this;
  }

  ModuleRow ownKg(double min, double max) {
    return ownKg(min, max, COMMON_PRACTICE);
  }

  ModuleRow ownKg(double min, double max, String basis) {
    with("ownKg", min, max, basis);
    return this;
  }

  /** Inside of a space as the trade gives it. */
  ModuleRow inside(String space, int depthMm, int acrossMm, int heightMm) {
    return box("in " + space + " ", depthMm, acrossMm, heightMm, COMMON_PRACTICE);
  }

  /** Inside of a space where the trade gives none. */
  ModuleRow chosenInside(String space, int depthMm, int acrossMm, int heightMm) {
    return box("in " + space + " ", depthMm, acrossMm, heightMm, OUR_CHOICE);
  }

  ModuleRow bay(String bay, int depthMm, int acrossMm, int heightMm) {
    return box("bay " + bay + " ", depthMm, acrossMm, heightMm, OUR_CHOICE);
  }

  ModuleRow bayStaticKg(String bay, double min, double max, String basis) {
    with("bay " + bay + " staticKg", min, max, basis);
    return this;
  }

  ModuleRow spaceStaticKg(String space, double kg) {
    exactly("in " + space + " staticKg", kg, OUR_CHOICE);
    return this;
  }

  /** Ratings of the runners; both locks are always asked for. */
  ModuleRow slide(
      double staticKg, double roadKg, double offRoadKg, int minPercent, int maxPercent) {
    ratings("slide ", staticKg, roadKg, offRoadKg, COMMON_PRACTICE);
    with("extensionPercent", minPercent, maxPercent, COMMON_PRACTICE);
    exactly("locksInAndOut", 1, Basis.trade("T30"));
    return this;
  }

  ModuleRow rating(double staticKg, double roadKg, double offRoadKg) {
    return ratings("", staticKg, roadKg, offRoadKg, COMMON_PRACTICE);
  }

  ModuleRow staticKg(double min, double max) {
    with("staticKg", min, max, COMMON_PRACTICE);
    return this;
  }

  /** Ratings of which the trade gives ranges: parked, road, off the road. */
  ModuleRow ratings(Range staticKg, Range roadKg, Range offRoadKg) {
    with("staticKg", staticKg.min(), staticKg.max(), staticKg.basis());
    with("roadKg", roadKg.min(), roadKg.max(), roadKg.basis());
    with("offRoadKg", offRoadKg.min(), offRoadKg.max(), offRoadKg.basis());
    return this;
  }

  /** One figure in the trade for what a holder carries: taken for parked and moving alike. */
  ModuleRow holds(double kg, String basis) {
    return ratings("", kg, kg, kg, basis);
  }

  ModuleRow bars(int count, boolean floor, int maxProjectionMm) {
    exactly("bars", count, COMMON_PRACTICE);
    exactly("floor", floor ? 1 : 0, OUR_CHOICE);
    with("barStaticKg", 50, 75, COMMON_PRACTICE);
    with("projectionMm", 0, maxProjectionMm, OUR_CHOICE);
    return this;
  }

  ModuleRow tank(double litres, double emptyKg, String basis) {
    exactly("tankL", litres, basis);
    exactly("tankEmptyKg", emptyKg, basis);
    with("tankBoxOverCapacity", 1.0, 1.02, OUR_CHOICE);
    return this;
  }

  private ModuleRow ratings(
      String prefix, double staticKg, double roadKg, double offRoadKg, String basis) {
    exactly(prefix + "staticKg", staticKg, basis);
    exactly(prefix + "roadKg", roadKg, basis);
    exactly(prefix + "offRoadKg", offRoadKg, basis);
    return this;
  }

  private ModuleRow box(String prefix, int depthMm, int acrossMm, int heightMm, String basis) {
    exactly(prefix + "depthMm", depthMm, basis);
    exactly(prefix + "acrossMm", acrossMm, basis);
    exactly(prefix + "heightMm", heightMm, basis);
    return this;
  }
}
