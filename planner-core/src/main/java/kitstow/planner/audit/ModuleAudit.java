package kitstow.planner.audit;

import java.util.List;
import java.util.Optional;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.Facing;
import kitstow.planner.model.RuleId;

/**
 * Modules in their bays, clear of each other and of items, closed and while they come out with what
 * they carry.
 */
final class ModuleAudit {
  private ModuleAudit() {}

  static void judge(AuditCase audited, Findings findings) {
    List<AuditedModule> modules = audited.modules();
    for (int i = 0; i < modules.size(); i++) {
      judgeBay(modules.get(i), findings);
      for (AuditedModule later : modules.subList(i + 1, modules.size())) {
        judgePair(modules.get(i), later, findings);
      }
      for (AuditedItem item : audited.items()) {
        judgeItem(modules.get(i), item, findings);
        if (modules.get(i).slides() && item.ridesOn(modules.get(i))) {
          judgeRider(audited, modules.get(i), item, findings);
        }
      }
    }
  }

  private static void judgeBay(AuditedModule module, Findings findings) {
    SizeMm size = module.fitted().module().size();
    Block bay = Block.of(module.fitted().bay().box());
    boolean toTheRear = module.fitted().bay().facing() == Facing.REAR;
    int alongXMm = toTheRear ? size.lengthMm() : size.widthMm();
    int alongYMm = toTheRear ? size.widthMm() : size.lengthMm();
    int tooMuchMm =
        Math.max(
            alongXMm - bay.x().lengthMm(),
            Math.max(alongYMm - bay.y().lengthMm(), size.heightMm() - bay.z().lengthMm()));
    if (tooMuchMm > 0) {
      findings.broken(
          RuleId.MODULE_IN_BAY,
          List.of(module.id(), module.fitted().bay().id()),
          tooMuchMm,
          0.0,
          "mm");
    }
  }

  private static void judgePair(AuditedModule one, AuditedModule other, Findings findings) {
    if (one.isNestedWith(other)) {
      return;
    }
    long depthMm =
        Math.max(
            one.block().depthInMm(other.block()),
            Math.max(depthInMm(one.swept(), other.block()), depthInMm(other.swept(), one.block())));
    noteClash(one.id(), other.id(), depthMm, findings);
  }

  private static void judgeItem(AuditedModule module, AuditedItem item, Findings findings) {
    long depthMm = 0L;
    if (!item.isIn(module)) {
      depthMm = module.block().depthInMm(item.block());
    }
    if (!item.ridesOn(module)) {
      depthMm = Math.max(depthMm, depthInMm(module.swept(), item.block()));
    }
    noteClash(module.id(), item.key(), depthMm, findings);
  }

  /** What a slide carries out stays clear, all the way, of what it does not carry. */
  private static void judgeRider(
      AuditCase audited, AuditedModule slide, AuditedItem rider, Findings findings) {
    Block room = slide.onTheWayOut(rider.block());
    for (AuditedModule other : audited.modules()) {
      boolean holdsOrRides =
          other.id().equals(slide.id())
              || rider.isIn(other)
              || slide.isIn(other)
              || other.ridesOn(slide);
      if (!holdsOrRides) {
        noteClash(slide.id(), other.id(), room.depthInMm(other.block()), findings);
      }
    }
    for (AuditedItem other : audited.items()) {
      if (!other.ridesOn(slide)) {
        noteClash(slide.id(), other.key(), room.depthInMm(other.block()), findings);
      }
    }
  }

  private static long depthInMm(Optional<Block> swept, Block block) {
    return swept.map(block::depthInMm).orElse(0L);
  }

  private static void noteClash(String one, String other, long depthMm, Findings findings) {
    if (depthMm > 0L) {
      findings.broken(RuleId.MODULE_CLASH, Findings.pair(one, other), (double) depthMm, 0.0, "mm");
    }
  }
}
