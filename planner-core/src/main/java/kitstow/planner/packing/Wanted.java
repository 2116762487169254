package kitstow.planner.packing;

import java.util.List;
import java.util.Optional;
import kitstow.planner.model.Item;
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

  /** The same unit with a pose, and perhaps a place, to try first. */
  public Wanted standing(int pose, boolean ratherStacked, Optional<SpacePointMm> at) {
    return new Wanted(item, unit, key, poses, pose, ratherStacked, at);
  }
}
