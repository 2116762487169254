package kitstow.planner.packing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.Boxes;
import kitstow.planner.model.FittedModule;
import kitstow.planner.model.KeepClear;
import kitstow.planner.model.Mark;
import kitstow.planner.model.Pin;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Reach;
import kitstow.planner.model.Rig;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Settings;
import kitstow.planner.model.Space;
import kitstow.planner.model.Stop;

/**
 * Judges one more item while a group of spaces is being packed: every rule of place, company and
 * emergency reach that the finished plan will be held against, for the newcomer and for what
 * already stands there. Bearing is judged with every item at its heaviest.
 */
final class PlacementJudge {
  /** Rules of reach that keep a thing out of some spaces whole; all others bear on its place. */
  static final Set<RuleId> REACH_OF_SPACES =
      Collections.unmodifiableSet(EnumSet.of(RuleId.CAB_REACH, RuleId.STOP_REACH));

  private static final double HALF_A_GRAM = 0.5;

  private final Rig rig;
  private final Settings settings;

  PlacementJudge(Rig rig) {
    this.rig = rig;
    this.settings = rig.scenario().settings();
  }

  /**
   * The first rule of a space that an item breaks wherever in it it stands, if any: company with
   * the air, cover, roofs, pins, doors.
   */
  Optional<RuleId> bars(Wanted wanted, Space space, Pose pose) {
    boolean outside = OutsideAir.has(space);
    if (!outside && wanted.item().marks().contains(Mark.GAS)) {
      return Optional.of(RuleId.GAS_OUTSIDE);
    }
    if (!outside && wanted.item().marks().contains(Mark.FUEL)) {
      return Optional.of(RuleId.FUEL_OUTSIDE);
    }
    if (Cover.lacking(wanted.item(), space)) {
      return Optional.of(RuleId.UNDER_COVER);
    }
    if (RoofLoad.excessG(wanted.item(), space, settings) > 0L) {
      return Optional.of(RuleId.ROOF_GEAR);
    }
    if (CabPlace.lacking(wanted.item(), space)) {
      return Optional.of(RuleId.CAB_REACH);
    }
    if (wanted.item().pin().isPresent()) {
      Pin pin = wanted.item().pin().get();
      boolean turned = pin.turn().map(pose.turn()::equals).orElse(true);
      if (!pin.spaceId().equals(space.id()) || !turned) {
        return Optional.of(RuleId.PIN_KEPT);
      }
    }
    BoxMm room = Room.of(space);
    if (pose.size().lengthMm() > room.lengthMm()
        || pose.size().widthMm() > room.widthMm()
        || pose.size().heightMm() > room.heightMm()) {
      return Optional.of(RuleId.INSIDE_SPACE);
    }
    BoxMm box = BoxMm.at(room.corner(), pose.size());
    if (DoorPassage.shortMm(rig, space, box, settings.apertureClearanceMm()) > 0) {
      return Optional.of(RuleId.DOOR_APERTURE);
    }
    return isShutIn(wanted, space, box) ? Optional.of(RuleId.STOP_REACH) : Optional.empty();
  }

  /** Whether it is needed at a stop and does not come out there. */
  private boolean isShutIn(Wanted wanted, Space space, BoxMm box) {
    if (wanted.item().reach() != Reach.EMERGENCY) {
      return false;
    }
    for (Stop stop : rig.scenario().stops()) {
      if (!StopDoors.at(stop, rig).letOut(space, box, settings.apertureClearanceMm())) {
        return true;
      }
    }
    return false;
  }

  /** The first rule that is broken if an item is added to a scene, if any. */
  Optional<RuleId> breaks(PlacedItem item, Scene scene) {
    if (Boxes.protrusionMm(item.box(), scene.site().room()) > 0) {
      return Optional.of(RuleId.INSIDE_SPACE);
    }
    for (PlacedItem other : scene.near()) {
      if (Boxes.overlap(item.box(), other.box())) {
        return Optional.of(RuleId.NO_OVERLAP);
      }
    }
    for (Site.Obstacle obstacle : scene.site().obstacles()) {
      if (Boxes.overlap(obstacle.box(), item.box())) {
        return Optional.of(obstacle.rule());
      }
    }
    if (hitsOnTheWayOut(item, scene)) {
      return Optional.of(RuleId.MODULE_CLASH);
    }
    if (item.box().maxZMm() > scene.site().topZMm()) {
      return Optional.of(RuleId.SLIDE_ENVELOPE);
    }
    Optional<RuleId> stands = standsBadly(item, scene);
    if (stands.isPresent()) {
      return stands;
    }
    Optional<RuleId> room = losesRoom(item, scene);
    return room.isPresent() ? room : blocksReach(item, scene);
  }

  /** Whether a newcomer is hit by what slides out, or slides out into something itself. */
  private boolean hitsOnTheWayOut(PlacedItem item, Scene scene) {
    if (item.space().movesWith().isEmpty() && !scene.anythingSlides()) {
      return false;
    }
    for (PlacedItem other : scene.near()) {
      if (ridesInto(item, other.space(), other.box())
          || ridesInto(other, item.space(), item.box())) {
        return true;
      }
    }
    for (String slideId : item.space().movesWith()) {
      FittedModule slide = rig.modules().get(slideId);
      if (slide != null && ridesIntoModule(item, slide)) {
        return true;
      }
    }
    return false;
  }

  private boolean ridesInto(PlacedItem rider, Space standing, BoxMm box) {
    for (String slideId : rider.space().movesWith()) {
      FittedModule slide = rig.modules().get(slideId);
      if (slide != null
          && !standing.movesWith().contains(slideId)
          && Boxes.overlap(SlideTravel.swept(rider.box(), slide), box)) {
        return true;
      }
    }
    return false;
  }

  private boolean ridesIntoModule(PlacedItem rider, FittedModule slide) {
    for (FittedModule other : rig.modules().values()) {
      String id = other.module().id();
      boolean own =
          id.equals(slide.module().id())
              || slide.inModules().contains(id)
              || rider.space().inModules().contains(id)
              || other.movesWith().contains(slide.module().id());
      if (!own && Boxes.overlap(SlideTravel.swept(rider.box(), slide), other.box())) {
        return true;
      }
    }
    return false;
  }

  private Optional<RuleId> standsBadly(PlacedItem item, Scene scene) {
    Space space = item.space();
    boolean bareBars = scene.site().bareBars();
    for (PlacedItem other : scene.inSpace()) {
      if (Boxes.footprintOverlapMm2(item.box(), other.box()) > 0L) {
        boolean above = item.box().minZMm() >= other.box().maxZMm();
        PlacedItem lower = above ? other : item;
        if (bareBars || lower.item().bearsG() == 0L) {
          return Optional.of(RuleId.CLEAR_COLUMN);
        }
      }
    }
    if (space.bars().isPresent() && !BarCarriage.carried(item.box(), space, space.bars().get())) {
      return Optional.of(RuleId.TWO_BARS);
    }
    if (bareBars) {
      return Optional.empty();
    }
    Contacts contacts = Contacts.of(item, space, scene.inSpace());
    if (!contacts.supported(settings.supportPermille())) {
      return Optional.of(RuleId.SUPPORT);
    }
    return bearingKept(item, contacts, scene) ? Optional.empty() : Optional.of(RuleId.BEARING);
  }

  private static boolean bearingKept(PlacedItem item, Contacts own, Scene scene) {
    boolean propsUp = false;
    for (PlacedItem other : scene.inSpace()) {
      propsUp |= restsOn(other, item);
    }
    if (own.items().isEmpty() && !propsUp) {
      return true;
    }
    List<Contacts> all = new ArrayList<>();
    List<PlacedItem> with = new ArrayList<>(scene.inSpace());
    with.add(item);
    for (Contacts old : scene.contacts()) {
      all.add(restsOn(old.item(), item) ? Contacts.of(old.item(), item.space(), with) : old);
    }
    all.add(own);
    Map<String, Double> carried = LoadPath.of(all).carriedG(PlacementJudge::heaviestG);
    for (Contacts one : all) {
      long bearsG = one.item().item().bearsG();
      double loadG = carried.getOrDefault(one.item().key(), 0.0);
      if (bearsG > 0L && loadG > bearsG + HALF_A_GRAM) {
        return false;
      }
    }
    return true;
  }

  private static boolean restsOn(PlacedItem upper, PlacedItem lower) {
    return upper.box().minZMm() == lower.box().maxZMm()
        && Boxes.footprintOverlapMm2(upper.box(), lower.box()) > 0L;
  }

  /** What an item weighs at its heaviest, in grams. */
  private static long heaviestG(PlacedItem placed) {
    return RoofLoad.heaviestG(placed.item());
  }

  private Optional<RuleId> losesRoom(PlacedItem item, Scene scene) {
    boolean demands = !item.item().keepClear().isEmpty();
    if (!demands && scene.demanding().isEmpty()) {
      return Optional.empty();
    }
    List<PlacedItem> demanding = new ArrayList<>(scene.demanding());
    if (demands) {
      demanding.add(item);
    }
    List<PlacedItem> all = null;
    for (PlacedItem one : demanding) {
      for (KeepClear keep : one.item().keepClear()) {
        if (!one.is(item) && !reaches(item, one, keep)) {
          continue;
        }
        if (all == null) {
          all = scene.around();
          all.add(item);
        }
        boolean air = keep.kind() == KeepClear.Kind.AIR;
        boolean kept =
            air ? AirRoom.kept(rig, all, one, keep) : LidRoom.on(rig, all).opens(one, keep);
        if (!kept) {
          return Optional.of(air ? RuleId.AIR_CLEARANCE : RuleId.LID_CLEARANCE);
        }
      }
    }
    return Optional.empty();
  }

  /** Whether a newcomer stands in any room that another item wants kept clear. */
  private boolean reaches(PlacedItem newcomer, PlacedItem other, KeepClear keep) {
    for (BoxMm region : KeptRoom.alternatives(other.box(), other.placement().turn(), keep)) {
      if (Boxes.overlap(region, newcomer.box())) {
        return true;
      }
      if (keep.kind() == KeepClear.Kind.LID && !other.space().movesWith().isEmpty()) {
        FittedModule slide = rig.modules().get(other.space().movesWith().get(0));
        if (slide != null && Boxes.overlap(region.moved(slide.pullOut()), newcomer.box())) {
          return true;
        }
      }
    }
    return false;
  }

  private static Optional<RuleId> blocksReach(PlacedItem item, Scene scene) {
    if (item.item().reach() != Reach.EMERGENCY && !scene.anythingForEmergency()) {
      return Optional.empty();
    }
    List<PlacedItem> all = new ArrayList<>(scene.inSpace());
    all.add(item);
    for (PlacedItem one : all) {
      if (one.item().reach() == Reach.EMERGENCY && !WayOut.toMoveFirst(one, all).isEmpty()) {
        return Optional.of(RuleId.EMERGENCY_REACH);
      }
    }
    return Optional.empty();
  }
}
