package kitstow.planner.audit;

import kitstow.planner.model.Environment;
import kitstow.planner.model.KeepClear;
import kitstow.planner.model.RuleId;

/**
 * Room for air stays free: of items, of modules where the space does not move and, but in the open,
 * of the walls of the space.
 */
final class AirAudit {
  private AirAudit() {}

  static void judge(AuditCase audited, Findings findings) {
    for (AuditedItem item : audited.items()) {
      for (KeepClear room : item.item().keepClear()) {
        if (room.kind() == KeepClear.Kind.AIR && !hasAir(audited, item, room)) {
          findings.broken(RuleId.AIR_CLEARANCE, item.key());
        }
      }
    }
  }

  private static boolean hasAir(AuditCase audited, AuditedItem item, KeepClear room) {
    return switch (room.face()) {
      case TOP -> isFree(audited, item, item.block().above(room.clearMm()));
      case LENGTH_END -> hasAirAtAnEnd(audited, item, AuditedItem.LENGTH, room.clearMm());
      case WIDTH_END -> hasAirAtAnEnd(audited, item, AuditedItem.WIDTH, room.clearMm());
    };
  }

  private static boolean hasAirAtAnEnd(
      AuditCase audited, AuditedItem item, char dimension, int clearMm) {
    Block.Axis axis = item.axisOf(dimension);
    Span own = item.block().along(axis);
    return isFree(audited, item, item.block().with(axis, own.before(clearMm)))
        || isFree(audited, item, item.block().with(axis, own.after(clearMm)));
  }

  /**
   * Whether a region by an item holds nothing of another item, nor of a module that the space is
   * not in, and stays within the walls. What a slide meets with its modules is another matter.
   */
  static boolean isFree(AuditCase audited, AuditedItem item, Block region) {
    boolean open = item.space().environment().contains(Environment.OPEN_AIR);
    if (!open && !Block.of(item.space().box()).holds(region)) {
      return false;
    }
    for (AuditedItem other : audited.items()) {
      if (other.differsFrom(item) && other.block().sharesRoom(region)) {
        return false;
      }
    }
    return !item.space().movesWith().isEmpty() || isClearOfModules(audited, item, region);
  }

  private static boolean isClearOfModules(AuditCase audited, AuditedItem item, Block region) {
    for (AuditedModule module : audited.modules()) {
      if (!item.isIn(module) && module.block().sharesRoom(region)) {
        return false;
      }
    }
    return true;
  }
}
