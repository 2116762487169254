package kitstow.planner.model;

import java.util.List;

/**
 * Bars under a roof or side-rack space. An item needs two bars beneath it with its centre between
 * them; the nearest on either side of its centre share it by the lever rule.
 *
 * @param bars bars in order from front to rear
 * @param platformFloor whether a floor lies on the bars, so that things stand and stack as on a
 *     deck
 * @param projectionFrontMm how far an item may reach forward of the space
 * @param projectionRearMm how far an item may reach behind the space
 * @param projectionSideMm how far an item may reach beyond either side
 */
public record RoofBars(
    List<Bar> bars,
    boolean platformFloor,
    int projectionFrontMm,
    int projectionRearMm,
    int projectionSideMm) {
  /** Copies its collections. */
  public RoofBars {
    bars = List.copyOf(bars);
  }

  /**
   * One bar.
   *
   * @param id unique in the space
   * @param fromFrontMm its line behind the front of the space
   * @param ratings what it may carry
   */
  public record Bar(String id, int fromFrontMm, Ratings ratings) {}
}
