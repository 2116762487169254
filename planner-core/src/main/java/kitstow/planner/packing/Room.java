package kitstow.planner.packing;

import kitstow.planner.geometry.BoxMm;
import kitstow.planner.model.RoofBars;
import kitstow.planner.model.Space;

/** The box an item must lie in: its space, and on bars what it may project beyond. */
public final class Room {
  private Room() {}

  /** The box of a space with its allowed projections, vehicle frame. */
  public static BoxMm of(Space space) {
    BoxMm box = space.box();
    if (!space.bars().isPresent()) {
      return box;
    }
    RoofBars bars = space.bars().get();
    return new BoxMm(
        box.minXMm() - bars.projectionFrontMm(),
        box.minYMm() - bars.projectionSideMm(),
        box.minZMm(),
        box.maxXMm() + bars.projectionRearMm(),
        box.maxYMm() + bars.projectionSideMm(),
        box.maxZMm());
  }
}
