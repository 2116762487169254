package kitstow.planner.packing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.Boxes;
import kitstow.planner.model.FittedDoor;
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
import kitstow.planner.model.Zone;

/**
 * Judges one more item while a group of spaces is being packed: every rule of place, company and
 * emergency reach that the finished plan will be held against, for the newcomer and for what
 * already stands there. Bearing is judged with every item at its heaviest.
 */
final class PlacementJudge {
  private static final double HALF_A_GRAM = 0.5;

  private final Rig rig;
  private final Settings settings;
  private final Optional<BoxMm> canopy;
  private final Map<String, List<BoxMm>> obstacles = new HashMap<>();

  PlacementJudge(Rig rig) {
    this.rig = rig;
    this.settings = rig.scenario().settings();
    this.canopy = CanopyBody.of(rig.scenario());
  }

  /**
   * The first rule of a space that an item breaks wherever in it it stands, if any: company with
   * the air, doors, pins.
   */
  Optional<RuleId> bars(Wanted wanted, Space space, Pose pose) {
    boolean outside = OutsideAir.has(space);
    if (!outside && wanted.item().marks().contains(Mark.GAS)) {
      return Optional.of(RuleId.GAS_OUTSIDE);
    }
    if (!outside && wanted.item().marks().contains(Mark.FUEL)) {
      return Optional.of(RuleId.FUEL_OUTSIDE);
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
    return Optional.empty();
  }

  /** The first rule that is broken if an item is added to a trial, if any. */
  Optional<RuleId> breaks(PlacedItem item, Trial trial) {
    Space space = item.space();
    List<PlacedItem> inSpace = trial.in(space.id());
    if (Boxes.protrusionMm(item.box(), Room.of(space)) > 0) {
      return Optional.of(RuleId.INSIDE_SPACE);
    }
    for (PlacedItem other : trial.all()) {
      if (Boxes.overlap(item.box(), other.box())) {
        return Optional.of(RuleId.NO_OVERLAP);
      }
    }
    if (hitsModule(item) || hitsOnTheWayOut(item, trial)) {
      return Optional.of(RuleId.MODULE_CLASH);
    }
    if (outsideIntoCanopy(item)) {
      return Optional.of(RuleId.CANOPY_CLASH);
    }
    if (foulsDoor(item)) {
      return Optional.of(RuleId.SLIDE_ENVELOPE);
    }
    for (PlacedItem other : inSpace) {
      if (Company.hardPair(item, other).isPresent()) {
        return Optional.of(RuleId.FORBIDDEN_PAIR);
      }
    }
    Optional<RuleId> stands = standsBadly(item, trial, inSpace);
    if (stands.isPresent()) {
      return stands;
    }
    Optional<RuleId> room = losesRoom(item, trial);
    return room.isPresent() ? room : blocksReach(item, inSpace);
  }

  private boolean hitsModule(PlacedItem item) {
    for (BoxMm obstacle : obstacles.computeIfAbsent(item.space().id(), id -> of(item.space()))) {
      if (Boxes.overlap(obstacle, item.box())) {
        return true;
      }
    }
    return false;
  }

  private boolean outsideIntoCanopy(PlacedItem item) {
    return item.space().zone() != Zone.CANOPY
        && canopy.isPresent()
        && Boxes.overlap(canopy.get(), item.box());
  }

  /** Whether a newcomer is hit by what slides out, or slides out into something itself. */
  private boolean hitsOnTheWayOut(PlacedItem item, Trial trial) {
    if (item.space().movesWith().isEmpty() && !trial.anythingSlides()) {
      return false;
    }
    for (PlacedItem other : trial.all()) {
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

  /** Modules, and what they sweep, that are no part of a space and reach into it. */
  private List<BoxMm> of(Space space) {
    List<BoxMm> found = new ArrayList<>();
    BoxMm room = Room.of(space);
    for (FittedModule module : rig.modules().values()) {
      String id = module.module().id();
      if (!space.inModules().contains(id) && Boxes.overlap(module.box(), room)) {
        found.add(module.box());
      }
      if (!space.movesWith().contains(id) && Boxes.overlap(SlideTravel.swept(module), room)) {
        found.add(SlideTravel.swept(module));
      }
    }
    return found;
  }

  private boolean foulsDoor(PlacedItem item) {
    for (String slideId : item.space().movesWith()) {
      FittedModule slide = rig.modules().get(slideId);
      if (slide != null && item.box().maxZMm() > slide.box().maxZMm()) {
        SlideTravel.Envelope envelope = SlideTravel.envelope(rig, slide, List.of(item));
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
        if (!passes) {
          return true;
        }
      }
    }
    return false;
  }

  private Optional<RuleId> standsBadly(PlacedItem item, Trial trial, List<PlacedItem> inSpace) {
    Space space = item.space();
    boolean bareBars = space.bars().isPresent() && !space.bars().get().platformFloor();
    for (PlacedItem other : inSpace) {
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
    Contacts contacts = Contacts.of(item, space, inSpace);
    if (!contacts.supported(settings.supportPermille())) {
      return Optional.of(RuleId.SUPPORT);
    }
    return bearingKept(item, contacts, trial) ? Optional.empty() : Optional.of(RuleId.BEARING);
  }

  private boolean bearingKept(PlacedItem item, Contacts contacts, Trial trial) {
    List<Contacts> all = trial.contactsWith(item, contacts);
    boolean anythingStacked = false;
    for (Contacts one : all) {
      anythingStacked |= !one.items().isEmpty();
    }
    if (!anythingStacked) {
      return true;
    }
    Map<String, Double> carried = LoadPath.of(all).carriedG(Trial::heaviestG);
    for (Contacts one : all) {
      long bearsG = one.item().item().bearsG();
      double loadG = carried.getOrDefault(one.item().key(), 0.0);
      if (bearsG > 0L && loadG > bearsG + HALF_A_GRAM) {
        return false;
      }
    }
    return true;
  }

  private Optional<RuleId> losesRoom(PlacedItem item, Trial trial) {
    List<PlacedItem> all = null;
    for (PlacedItem one : trial.demanding(item)) {
      for (KeepClear keep : one.item().keepClear()) {
        if (!one.is(item) && !reaches(item, one, keep)) {
          continue;
        }
        if (all == null) {
          all = new ArrayList<>(trial.all());
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

  private static Optional<RuleId> blocksReach(PlacedItem item, List<PlacedItem> inSpace) {
    List<PlacedItem> all = new ArrayList<>(inSpace);
    all.add(item);
    for (PlacedItem one : all) {
      if (one.item().reach() == Reach.EMERGENCY && !WayOut.toMoveFirst(one, all).isEmpty()) {
        return Optional.of(RuleId.EMERGENCY_REACH);
      }
    }
    return Optional.empty();
  }
}
