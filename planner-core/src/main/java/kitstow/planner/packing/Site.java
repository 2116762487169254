package kitstow.planner.packing;

import java.util.List;
import kitstow.planner.geometry.BoxMm;
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
  private int[] near = {};
  private int[] around = {};

  Site(int index, Space space, int topZMm, List<Obstacle> obstacles) {
    this.index = index;
    this.space = space;
    this.room = Room.of(space);
    this.topZMm = topZMm;
    this.obstacles = List.copyOf(obstacles);
  }

  void neighbours(int[] nearSites, int[] aroundSites) {
    this.near = nearSites.clone();
    this.around = aroundSites.clone();
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

  boolean bareBars() {
    return space.bars().isPresent() && !space.bars().get().platformFloor();
  }

  /** Sites whose contents can be in the way of what stands here, this one included. */
  int[] near() {
    return near.clone();
  }

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
