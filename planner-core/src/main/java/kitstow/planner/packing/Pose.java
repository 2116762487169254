package kitstow.planner.packing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.geometry.Turn;
import kitstow.planner.model.Item;
import kitstow.planner.model.Pin;

/**
 * One way an item can stand: which of its shapes, and turned how.
 *
 * @param shape index into the item's shapes
 * @param turn turn
 * @param size size as it stands
 */
public record Pose(int shape, Turn turn, SizeMm size) {
  /**
   * All different ways an item may stand, in a fixed order; turns that look alike count once, and
   * of one that is pinned to a turn no other does.
   */
  public static List<Pose> of(Item item) {
    List<Pose> poses = new ArrayList<>();
    Set<Turn> turns =
        item.pin()
            .flatMap(Pin::turn)
            .filter(item.turns()::contains)
            .map(Collections::singleton)
            .orElse(item.turns());
    for (int shape = 0; shape < item.shapes().size(); shape++) {
      for (Turn turn : new TreeSet<>(turns)) {
        Pose pose = new Pose(shape, turn, turn.applyTo(item.shapes().get(shape)));
        boolean alike = false;
        for (Pose old : poses) {
          alike |= old.size().equals(pose.size());
        }
        if (!alike || !item.keepClear().isEmpty()) {
          poses.add(pose);
        }
      }
    }
    return poses;
  }
}
