package kitstow.planner.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitstow.planner.model.Facing;
import kitstow.planner.model.FittedDoor;
import kitstow.planner.model.Reach;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Space;
import kitstow.planner.model.Stop;
import kitstow.planner.model.Zone;

/**
 * Emergency gear comes out where the ute stands and not everything opens. Every thing has hurdles
 * to pass, each of which can be passed one way or another; it is shut in if none of the ways past
 * one of its hurdles is open.
 */
final class StopAudit {
  private StopAudit() {}

  /** One way past a hurdle: where it leads to, what its lower edge is, and through which door. */
  private record Way(Facing side, int lowerEdgeMm, Optional<String> door) {
    boolean isOpen(Stop stop) {
      boolean shut =
          stop.shutSides().contains(side)
              || lowerEdgeMm < stop.shutBelowMm()
              || door.filter(stop.shutDoorIds()::contains).isPresent();
      return !shut;
    }

    static Way through(FittedDoor door) {
      return new Way(door.door().side(), door.sillZMm(), Optional.of(door.door().id()));
    }
  }

  static void judge(AuditCase audited, Findings findings) {
    if (audited.scenario().stops().isEmpty()) {
      return;
    }
    for (AuditedItem item : audited.items()) {
      if (item.item().reach() == Reach.EMERGENCY && item.space().zone() != Zone.CAB) {
        List<List<Way>> hurdles = hurdles(audited, item);
        for (Stop stop : audited.scenario().stops()) {
          boolean shutIn =
              hurdles.stream().anyMatch(ways -> ways.stream().noneMatch(way -> way.isOpen(stop)));
          if (shutIn) {
            findings.broken(RuleId.STOP_REACH, item.key(), stop.id());
          }
        }
      }
    }
  }

  private static List<List<Way>> hurdles(AuditCase audited, AuditedItem item) {
    List<List<Way>> hurdles = new ArrayList<>();
    boolean slidesOut = false;
    for (AuditedModule module : audited.modules()) {
      if (item.ridesOn(module)) {
        slidesOut = true;
        hurdles.add(waysOfSlide(audited, module));
      }
    }
    if (!slidesOut) {
      hurdles.add(waysOfItem(audited, item));
    }
    // A hurdle with no way past it at any time is a fault of the door, not of the stop.
    hurdles.removeIf(List::isEmpty);
    return hurdles;
  }

  private static List<Way> waysOfSlide(AuditCase audited, AuditedModule module) {
    Block block = module.block();
    Facing side = module.fitted().bay().facing();
    if (module.fitted().bay().doorIds().isEmpty()) {
      return List.of(new Way(side, block.z().fromMm(), Optional.empty()));
    }
    int topMm = block.z().toMm();
    for (AuditedModule other : audited.modules()) {
      topMm = other.ridesOn(module) ? Math.max(topMm, other.block().z().toMm()) : topMm;
    }
    Span across = side == Facing.REAR ? block.y() : block.x();
    Span upward = new Span(block.z().fromMm(), topMm);
    List<Way> ways = new ArrayList<>();
    for (FittedDoor door : module.doorsInFront(audited.rig())) {
      if (DoorAudit.letsPass(door, across, upward)) {
        ways.add(Way.through(door));
      }
    }
    return ways;
  }

  private static List<Way> waysOfItem(AuditCase audited, AuditedItem item) {
    Space space = item.space();
    Optional<Facing> side = DoorAudit.doorSide(space);
    List<Way> ways = new ArrayList<>();
    if (!side.isPresent()) {
      for (String id : space.doorIds()) {
        Optional.ofNullable(audited.rig().doors().get(id)).map(Way::through).ifPresent(ways::add);
      }
      return ways;
    }
    if (space.doorIds().isEmpty()) {
      return List.of(new Way(side.get(), space.box().minZMm(), Optional.empty()));
    }
    int clearanceMm = audited.scenario().settings().apertureClearanceMm();
    Span width = side.get() == Facing.REAR ? item.block().y() : item.block().x();
    for (FittedDoor door : AuditCase.doors(audited.rig(), space.doorIds(), side.get())) {
      int highMm = item.block().z().lengthMm() + clearanceMm;
      if (DoorAudit.takes(door, width.lengthMm() + clearanceMm, highMm)) {
        ways.add(Way.through(door));
      }
    }
    return ways;
  }
}
