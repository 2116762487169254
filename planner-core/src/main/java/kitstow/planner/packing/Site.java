package kitstow.planner.packing;

import java.util.List;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.Boxes;
import kitstow.planner.model.FittedModule;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Space;

/** A space with all that does not change while gear is packed into it. */
final class Site {
  /** Something fixed that reaches into the room of a space, and the rule that keeps it free. */
  record Obstacle(BoxMm box, RuleId rule) {}

  private final int index;
  private final Space space;
  private final BoxMm room;
  private final int topZMm;
  private final List<Obstacle> obstacles;
  private final List<BoxMm> extents;
  private final List<FittedModule> slides;
  private int[] near = {};
  private int[] around = {};
  private boolean oneAir;

  /**
   * A space.
   *
   * @param extents where its contents, the room they keep clear and what they sweep can be
   * @param slides modules it slides out with
   */
  Site(
      int index,
      Space space,
      int topZMm,
      List<Obstacle> obstacles,
      List<BoxMm> extents,
      List<FittedModule> slides) {
    this.extents = List.copyOf(extents);
    this.slides = List.copyOf(slides);
    this.index = index;
    this.space = space;
    this.room = Room.of(space);
    this.topZMm = topZMm;
    this.obstacles = List.copyOf(obstacles);
  }

  /**
   * Tells it of the others.
   *
   * @param oneAir whether what gas and fuel give off in any of them is here, too
   */
  void neighbours(int[] nearSites, int[] aroundSites, boolean oneAir) {
    this.near = nearSites.clone();
    this.around = aroundSites.clone();
    this.oneAir = oneAir;
  }

  /** Whether another space has the same air, and gas and fuel may ride in both. */
  boolean hasAirOf(Space other) {
    return oneAir && OutsideAir.isOne(space, other);
  }

  int index() {
    return index;
  }

  Space space() {
    return space;
  }

  /** The space with its allowed projections. */
  BoxMm room() {
    return room;
  }

  /** The highest that anything may reach here, for the sake of the door it rides out through. */
  int topZMm() {
    return topZMm;
  }

  List<Obstacle> obstacles() {
    return obstacles;
  }

  List<BoxMm> extents() {
    return extents;
  }

  /** Whether something that stands in another space can matter to what stands here. */
  boolean isReachedBy(PlacedItem item, Site from) {
    if (!item.item().keepClear().isEmpty() || hasAirOf(item.space())) {
      return true;
    }
    for (BoxMm extent : extents) {
      if (Boxes.overlap(extent, item.box())) {
        return true;
      }
    }
    for (FittedModule slide : from.slides) {
      if (Boxes.overlap(SlideTravel.swept(item.box(), slide), room)) {
        return true;
      }
    }
    return false;
  }

  boolean bareBars() {
    return space.bars().isPresent() && !space.bars().get().platformFloor();
  }

  /** Number of sites whose contents can be in the way of what stands here, this one included. */
  int nearCount() {
    return near.length;
  }

  int near(int i) {
    return near[i];
  }

  int aroundCount() {
    return around.length;
  }

  /** Sites whose contents can matter to whether something may stand here; holds the near ones. */
  int around(int i) {
    return around[i];
  }
}
