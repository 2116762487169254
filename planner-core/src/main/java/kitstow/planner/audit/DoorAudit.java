package kitstow.planner.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitstow.planner.model.Door;
import kitstow.planner.model.Facing;
import kitstow.planner.model.FittedDoor;
import kitstow.planner.model.FittedModule;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Space;
import kitstow.planner.model.Zone;

/**
 * What must pass a door: slides with the tallest of what they carry, and items on the way to their
 * space.
 */
final class DoorAudit {
  private DoorAudit() {}

  static void judge(AuditCase audited, Findings findings) {
    for (AuditedModule module : audited.modules()) {
      judgeSlide(audited, module, findings);
    }
    for (AuditedItem item : audited.items()) {
      judgeItem(audited, item, findings);
    }
  }

  private static void judgeSlide(AuditCase audited, AuditedModule module, Findings findings) {
    FittedModule fitted = module.fitted();
    List<FittedDoor> doors = module.doorsInFront(audited.rig());
    if (!module.slides()) {
      return;
    }
    if (doors.isEmpty()) {
      if (fitted.bay().zone() == Zone.CANOPY) {
        // A slide in the canopy that no door lets out.
        findings.broken(RuleId.SLIDE_ENVELOPE, module.id(), fitted.bay().id());
      }
      return;
    }
    Span along = fitted.bay().facing() == Facing.REAR ? module.block().y() : module.block().x();
    Span upward = new Span(module.block().z().fromMm(), highestMm(audited, module));
    for (FittedDoor door : doors) {
      if (letsPass(door, along, upward)) {
        return;
      }
    }
    findings.broken(RuleId.SLIDE_ENVELOPE, module.id(), doors.get(0).door().id());
  }

  /** Top of the slide with all that it carries, gear and modules. */
  private static int highestMm(AuditCase audited, AuditedModule module) {
    int highestMm = module.block().z().toMm();
    for (AuditedItem item : audited.items()) {
      if (item.ridesOn(module)) {
        highestMm = Math.max(highestMm, item.block().z().toMm());
      }
    }
    for (AuditedModule other : audited.modules()) {
      if (other.ridesOn(module)) {
        highestMm = Math.max(highestMm, other.block().z().toMm());
      }
    }
    return highestMm;
  }

  private static void judgeItem(AuditCase audited, AuditedItem item, Findings findings) {
    Space space = item.space();
    Optional<Facing> side = doorSide(space);
    if (!space.movesWith().isEmpty() || space.doorIds().isEmpty() || !side.isPresent()) {
      return;
    }
    int clearanceMm = audited.scenario().settings().apertureClearanceMm();
    Span width = side.get() == Facing.REAR ? item.block().y() : item.block().x();
    int acrossMm = width.lengthMm() + clearanceMm;
    int highMm = item.block().z().lengthMm() + clearanceMm;
    for (FittedDoor door : AuditCase.doors(audited.rig(), space.doorIds(), side.get())) {
      if (takes(door, acrossMm, highMm)) {
        return;
      }
    }
    findings.broken(RuleId.DOOR_APERTURE, item.key(), space.id());
  }

  /** The side whose doors a space is filled through; none where it is filled otherwise. */
  static Optional<Facing> doorSide(Space space) {
    return switch (space.access()) {
      case LEFT -> Optional.of(Facing.LEFT);
      case RIGHT -> Optional.of(Facing.RIGHT);
      case REAR -> Optional.of(Facing.REAR);
      case FACE, ABOVE, FRONT -> Optional.empty();
    };
  }

  /** Whether a section passes just where it is. */
  static boolean letsPass(FittedDoor door, Span along, Span upward) {
    return along(door).holds(along) && upward(door).holds(upward) && isClear(door, along, upward);
  }

  /**
   * Whether a section passes somewhere. A section that passes can be pushed forward and down until
   * it meets the edge of the opening or of a strut both ways, so only those corners need a look.
   */
  static boolean takes(FittedDoor door, int acrossMm, int highMm) {
    List<Integer> starts = new ArrayList<>(List.of(door.fromMm()));
    List<Integer> lowers = new ArrayList<>(List.of(door.sillZMm()));
    for (Door.Strut strut : door.struts()) {
      starts.add(strut.toMm());
      lowers.add(strut.upperZMm());
    }
    for (int start : starts) {
      for (int lower : lowers) {
        Span along = new Span(start, start + acrossMm);
        Span upward = new Span(lower, lower + highMm);
        if (letsPass(door, along, upward)) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean isClear(FittedDoor door, Span along, Span upward) {
    for (Door.Strut strut : door.struts()) {
      if (along.shares(new Span(strut.fromMm(), strut.toMm()))
          && upward.shares(new Span(strut.lowerZMm(), strut.upperZMm()))) {
        return false;
      }
    }
    return true;
  }

  private static Span along(FittedDoor door) {
    return new Span(door.fromMm(), door.toMm());
  }

  private static Span upward(FittedDoor door) {
    return new Span(door.sillZMm(), door.headZMm());
  }
}
