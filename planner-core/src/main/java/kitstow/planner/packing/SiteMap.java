package kitstow.planner.packing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.Boxes;
import kitstow.planner.model.Environment;
import kitstow.planner.model.FittedDoor;
import kitstow.planner.model.FittedModule;
import kitstow.planner.model.Item;
import kitstow.planner.model.KeepClear;
import kitstow.planner.model.Rig;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Space;
import kitstow.planner.model.Zone;

/**
 * The spaces of a rig by index, and whose contents can be in each other's way: overlapping boxes,
 * projections, air of open spaces, lids above what is pulled out, one air where gas and fuel ride.
 */
public final class SiteMap {
  private final List<Site> sites = new ArrayList<>();
  private final Map<String, Integer> indexById = new HashMap<>();

  private SiteMap() {}

  /** The spaces of a rig, in its own order. */
  public static SiteMap of(Rig rig) {
    SiteMap map = new SiteMap();
    Optional<BoxMm> canopy = rig.scenario().canopyBody();
    PlacementJudge judge = new PlacementJudge(rig);
    for (Space space : rig.spaces().values()) {
      map.indexById.put(space.id(), map.sites.size());
      map.sites.add(
          new Site(
              map.sites.size(),
              space,
              topZMm(rig, space),
              obstacles(rig, space, canopy),
              extents(rig, space, judge),
              slides(rig, space)));
    }
    map.findNeighbours();
    return map;
  }

  /** Number of spaces. */
  public int size() {
    return sites.size();
  }

  /** The space of an index. */
  public Space space(int index) {
    return sites.get(index).space();
  }

  /** Whether things lie on bars there, with nothing on top of each other. */
  public boolean isBareBars(int index) {
    return site(index).bareBars();
  }

  /** Index of a space, or -1 where the rig has none of this id. */
  public int indexOf(String spaceId) {
    return indexById.getOrDefault(spaceId, -1);
  }

  Site site(int index) {
    return sites.get(index);
  }

  /** Modules, what they sweep, and for what is outside it the canopy, as far as they reach in. */
  private static List<Site.Obstacle> obstacles(Rig rig, Space space, Optional<BoxMm> canopy) {
    List<Site.Obstacle> found = new ArrayList<>();
    BoxMm room = Room.of(space);
    for (FittedModule module : rig.modules().values()) {
      String id = module.module().id();
      if (!space.inModules().contains(id) && Boxes.overlap(module.box(), room)) {
        found.add(new Site.Obstacle(module.box(), RuleId.MODULE_CLASH));
      }
      if (!space.movesWith().contains(id) && Boxes.overlap(SlideTravel.swept(module), room)) {
        found.add(new Site.Obstacle(SlideTravel.swept(module), RuleId.MODULE_CLASH));
      }
    }
    if (space.zone() != Zone.CANOPY
        && canopy.isPresent()
        && Boxes.overlap(canopy.get(), Room.of(space))) {
      found.add(new Site.Obstacle(canopy.get(), RuleId.CANOPY_CLASH));
    }
    return found;
  }

  /** How high something may reach in a space and still ride out through a door on its slide. */
  private static int topZMm(Rig rig, Space space) {
    int top = Room.of(space).maxZMm();
    for (FittedModule slide : slides(rig, space)) {
      int low = slide.box().maxZMm();
      int high = Math.max(low, top);
      while (low < high) {
        int middle = low + (high - low + 1) / 2;
        if (passesDoor(rig, slide, middle)) {
          low = middle;
        } else {
          high = middle - 1;
        }
      }
      top = Math.min(top, low);
    }
    return top;
  }

  private static boolean passesDoor(Rig rig, FittedModule slide, int riderTopZMm) {
    SlideTravel.Envelope bare = SlideTravel.envelope(rig, slide, List.of());
    SlideTravel.Envelope envelope =
        new SlideTravel.Envelope(
            bare.fromMm(), bare.toMm(), bare.lowerZMm(), Math.max(bare.upperZMm(), riderTopZMm));
    boolean passes = true;
    for (String doorId : slide.bay().doorIds()) {
      FittedDoor door = rig.doors().get(doorId);
      if (door != null && door.door().side() == slide.bay().facing()) {
        passes = SlideTravel.foulMm(envelope, door) == 0;
        if (passes) {
          break;
        }
      }
    }
    return passes;
  }

  private void findNeighbours() {
    int count = sites.size();
    boolean[][] meet = new boolean[count][count];
    for (int i = 0; i < count; i++) {
      meet[i][i] = true;
      for (int j = i + 1; j < count; j++) {
        meet[i][j] = meet(sites.get(i), sites.get(j));
        meet[j][i] = meet[i][j];
      }
    }
    for (int i = 0; i < count; i++) {
      TreeSet<Integer> near = new TreeSet<>();
      TreeSet<Integer> around = new TreeSet<>();
      boolean oneAir = false;
      for (int j = 0; j < count; j++) {
        if (meet[i][j]) {
          near.add(j);
          oneAir |= j != i && OutsideAir.isOne(space(i), space(j));
          for (int k = 0; k < count; k++) {
            if (meet[j][k]) {
              around.add(k);
            }
          }
        }
      }
      sites.get(i).neighbours(toArray(near), toArray(around), oneAir);
    }
  }

  private static int[] toArray(SortedSet<Integer> indices) {
    int[] array = new int[indices.size()];
    int i = 0;
    for (int index : indices) {
      array[i++] = index;
    }
    return array;
  }

  private static boolean meet(Site a, Site b) {
    for (BoxMm one : a.extents()) {
      if (Boxes.overlap(one, b.room())) {
        return true;
      }
    }
    for (BoxMm other : b.extents()) {
      if (Boxes.overlap(other, a.room())) {
        return true;
      }
    }
    return sharesSlide(a.space(), b.space()) || OutsideAir.isOne(a.space(), b.space());
  }

  private static boolean sharesSlide(Space a, Space b) {
    for (String slide : a.movesWith()) {
      if (b.movesWith().contains(slide)) {
        return true;
      }
    }
    return false;
  }

  private static List<FittedModule> slides(Rig rig, Space space) {
    List<FittedModule> slides = new ArrayList<>();
    for (String id : space.movesWith()) {
      FittedModule slide = rig.modules().get(id);
      if (slide != null) {
        slides.add(slide);
      }
    }
    return slides;
  }

  /** Where contents of a space, the room they keep clear, and what they sweep can be. */
  private static List<BoxMm> extents(Rig rig, Space space, PlacementJudge judge) {
    List<BoxMm> extents = new ArrayList<>();
    BoxMm room = Room.of(space);
    boolean open = space.environment().contains(Environment.OPEN_AIR);
    int air = open ? reachMm(rig, space, KeepClear.Kind.AIR, judge) : 0;
    extents.add(air > 0 ? grown(room, air) : room);
    boolean still = space.movesWith().isEmpty();
    int lid = !still || open ? reachMm(rig, space, KeepClear.Kind.LID, judge) : 0;
    BoxMm withLids = room.withHeights(room.minZMm(), room.maxZMm() + lid);
    if (lid > 0) {
      extents.add(withLids);
    }
    for (FittedModule slide : slides(rig, space)) {
      extents.add(SlideTravel.swept(room, slide));
      extents.add(withLids.moved(slide.pullOut()));
    }
    return extents;
  }

  /** The most room that any item which may stand in a space keeps clear. */
  private static int reachMm(Rig rig, Space space, KeepClear.Kind kind, PlacementJudge judge) {
    int reach = 0;
    for (Item item : rig.scenario().items()) {
      for (KeepClear keep : item.keepClear()) {
        if (keep.kind() == kind && keep.clearMm() > reach && mayStand(item, space, judge)) {
          reach = keep.clearMm();
        }
      }
    }
    return reach;
  }

  private static boolean mayStand(Item item, Space space, PlacementJudge judge) {
    Wanted wanted = Wanted.of(item, 1);
    for (Pose pose : wanted.poses()) {
      if (!judge.bars(wanted, space, pose).isPresent()) {
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
