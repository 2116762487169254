package kitstow.planner.packing;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.Boxes;
import kitstow.planner.geometry.PointMm;
import kitstow.planner.model.Environment;
import kitstow.planner.model.FittedModule;
import kitstow.planner.model.Rig;
import kitstow.planner.model.Space;

/**
 * Groups of spaces whose contents can be in each other's way: overlapping boxes, projections, air
 * of open spaces, lids above what is pulled out. Spaces of different groups are packed
 * independently.
 */
public final class Clusters {
  private Clusters() {}

  /**
   * The groups of a rig, each in the order of the rig's spaces.
   *
   * @param reachMm the largest room any item keeps clear
   */
  public static List<List<Space>> of(Rig rig, int reachMm) {
    List<Space> spaces = new ArrayList<>(rig.spaces().values());
    int[] group = new int[spaces.size()];
    for (int i = 0; i < group.length; i++) {
      group[i] = i;
    }
    for (int i = 0; i < group.length; i++) {
      for (int j = i + 1; j < group.length; j++) {
        if (group[i] != group[j] && meet(rig, spaces.get(i), spaces.get(j), reachMm)) {
          int from = group[j];
          for (int k = 0; k < group.length; k++) {
            group[k] = group[k] == from ? group[i] : group[k];
          }
        }
      }
    }
    List<List<Space>> clusters = new ArrayList<>();
    for (int i = 0; i < group.length; i++) {
      List<Space> members = new ArrayList<>();
      for (int j = 0; j < group.length; j++) {
        if (group[j] == i) {
          members.add(spaces.get(j));
        }
      }
      if (!members.isEmpty()) {
        clusters.add(members);
      }
    }
    return clusters;
  }

  private static boolean meet(Rig rig, Space a, Space b, int reachMm) {
    for (BoxMm one : extents(rig, a, reachMm)) {
      if (Boxes.overlap(one, Room.of(b))) {
        return true;
      }
    }
    for (BoxMm other : extents(rig, b, reachMm)) {
      if (Boxes.overlap(other, Room.of(a))) {
        return true;
      }
    }
    return sharesSlide(a, b);
  }

  private static boolean sharesSlide(Space a, Space b) {
    for (String slide : a.movesWith()) {
      if (b.movesWith().contains(slide)) {
        return true;
      }
    }
    return false;
  }

  /** Where contents of a space, or the room they keep clear, can be. */
  private static List<BoxMm> extents(Rig rig, Space space, int reachMm) {
    List<BoxMm> extents = new ArrayList<>();
    BoxMm room = Room.of(space);
    boolean open = space.environment().contains(Environment.OPEN_AIR);
    extents.add(open ? grown(room, reachMm) : room);
    if (!space.movesWith().isEmpty()) {
      FittedModule slide = rig.modules().get(space.movesWith().get(0));
      BoxMm lids = room.withHeights(room.minZMm(), room.maxZMm() + reachMm);
      extents.add(lids);
      if (slide != null) {
        PointMm out = slide.pullOut();
        extents.add(Boxes.union(lids, lids.moved(out)));
      }
    }
    return extents;
  }

  private static BoxMm grown(BoxMm box, int by) {
    return new BoxMm(
        box.minXMm() - by,
        box.minYMm() - by,
        box.minZMm() - by,
        box.maxXMm() + by,
        box.maxYMm() + by,
        box.maxZMm() + by);
  }
}
