package kitstow.planner.packing;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.Boxes;
import kitstow.planner.model.Environment;
import kitstow.planner.model.FittedModule;
import kitstow.planner.model.Item;
import kitstow.planner.model.KeepClear;
import kitstow.planner.model.Rig;
import kitstow.planner.model.Space;

/**
 * Groups of spaces whose contents can be in each other's way: overlapping boxes, projections, air
 * of open spaces, lids above what is pulled out. Spaces of different groups are packed
 * independently.
 */
public final class Clusters {
  private Clusters() {}

  /** The groups of a rig, each in the order of the rig's spaces. */
  public static List<List<Space>> of(Rig rig) {
    List<Space> spaces = new ArrayList<>(rig.spaces().values());
    int[] group = new int[spaces.size()];
    for (int i = 0; i < group.length; i++) {
      group[i] = i;
    }
    for (int i = 0; i < group.length; i++) {
      for (int j = i + 1; j < group.length; j++) {
        if (group[i] != group[j] && meet(rig, spaces.get(i), spaces.get(j))) {
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

  private static boolean meet(Rig rig, Space a, Space b) {
    for (BoxMm one : extents(rig, a)) {
      if (Boxes.overlap(one, Room.of(b))) {
        return true;
      }
    }
    for (BoxMm other : extents(rig, b)) {
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

  /** Where contents of a space, the room they keep clear, and what they sweep can be. */
  private static List<BoxMm> extents(Rig rig, Space space) {
    List<BoxMm> extents = new ArrayList<>();
    BoxMm room = Room.of(space);
    boolean open = space.environment().contains(Environment.OPEN_AIR);
    extents.add(open ? grown(room, reachMm(rig, space, KeepClear.Kind.AIR)) : room);
    if (space.movesWith().isEmpty()) {
      int lid = open ? reachMm(rig, space, KeepClear.Kind.LID) : 0;
      extents.add(room.withHeights(room.minZMm(), room.maxZMm() + lid));
      return extents;
    }
    int lid = reachMm(rig, space, KeepClear.Kind.LID);
    BoxMm withLids = room.withHeights(room.minZMm(), room.maxZMm() + lid);
    extents.add(withLids);
    for (String slideId : space.movesWith()) {
      FittedModule slide = rig.modules().get(slideId);
      if (slide != null) {
        extents.add(SlideTravel.swept(room, slide));
        extents.add(withLids.moved(slide.pullOut()));
      }
    }
    return extents;
  }

  /** The most room that any item which fits into a space keeps clear. */
  private static int reachMm(Rig rig, Space space, KeepClear.Kind kind) {
    int reach = 0;
    for (Item item : rig.scenario().items()) {
      for (KeepClear keep : item.keepClear()) {
        if (keep.kind() == kind && keep.clearMm() > reach && fits(item, Room.of(space))) {
          reach = keep.clearMm();
        }
      }
    }
    return reach;
  }

  private static boolean fits(Item item, BoxMm room) {
    for (Pose pose : Pose.of(item)) {
      if (pose.size().lengthMm() <= room.lengthMm()
          && pose.size().widthMm() <= room.widthMm()
          && pose.size().heightMm() <= room.heightMm()) {
        return true;
      }
    }
    return false;
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
