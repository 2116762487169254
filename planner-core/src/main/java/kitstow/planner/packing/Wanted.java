package kitstow.planner.packing;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import kitstow.planner.model.Item;
import kitstow.planner.model.Pin;
import kitstow.planner.model.Placement;
import kitstow.planner.model.SpacePointMm;

/**
 * A unit of an item that is to be placed.
 *
 * @param item the item
 * @param unit its unit, from 1
 * @param key its body key
 * @param poses the ways it may stand
 * @param firstPose index of the pose to try before all others, or -1
 * @param stacked whether it goes rather on top of others than further back
 * @param place where it is to stand in its first pose if it can, in the frame of its space
 */
public record Wanted(
    Item item,
    int unit,
    String key,
    List<Pose> poses,
    int firstPose,
    boolean stacked,
    Optional<SpacePointMm> place) {
  /** A unit without a preferred pose. */
  public static Wanted of(Item item, int unit) {
    return new Wanted(item, unit, item.keyOf(unit), Pose.of(item), -1, false, Optional.empty());
  }

  /** The one place that it is pinned to, if it is, in the frame of its space. */
  public Optional<SpacePointMm> pinned() {
    return item.pin().flatMap(Pin::corner);
  }

  /** The pose in which it stands in a plan, by its index; nothing if it has no such pose. */
  public OptionalInt poseIn(Placement placement) {
    for (int i = 0; i < poses.size(); i++) {
      if (poses.get(i).shape() == placement.shape() && poses.get(i).turn() == placement.turn()) {
        return OptionalInt.of(i);
      }
    }
    return OptionalInt.empty();
  }

  /** The same unit with a pose, and unless it is pinned perhaps a place, to try first. */
  public Wanted standing(int pose, boolean ratherStacked, Optional<SpacePointMm> at) {
    Optional<SpacePointMm> free = at.isPresent() && pinned().isPresent() ? Optional.empty() : at;
    return new Wanted(item, unit, key, poses, pose, ratherStacked, free);
  }
}
