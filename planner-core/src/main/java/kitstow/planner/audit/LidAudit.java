package kitstow.planner.audit;

import java.util.Optional;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.Canopy;
import kitstow.planner.model.KeepClear;
import kitstow.planner.model.LocalBoxMm;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.Space;
import kitstow.planner.model.Tray;

/**
 * Lids can be opened: in place in a fixed space; on a slide with the slide out, and closed too
 * unless the item then stands wholly outside the wall.
 */
final class LidAudit {
  private LidAudit() {}

  static void judge(AuditCase audited, Findings findings) {
    for (AuditedItem item : audited.items()) {
      for (KeepClear room : item.item().keepClear()) {
        if (room.kind() == KeepClear.Kind.LID && !opens(audited, item, room.clearMm())) {
          findings.broken(RuleId.LID_CLEARANCE, item.key());
        }
      }
    }
  }

  private static boolean opens(AuditCase audited, AuditedItem item, int clearMm) {
    Block closed = item.block().above(clearMm);
    return innermost(audited, item.space())
        .map(slide -> opensOnSlide(audited, item, slide, closed))
        .orElseGet(() -> AirAudit.isFree(audited, item, closed));
  }

  private static boolean opensOnSlide(
      AuditCase audited, AuditedItem item, AuditedModule slide, Block closed) {
    if (!isFreeOnSlide(audited, item, slide, closed)
        || !isFreeAround(audited, item, slide, slide.pulledOut(closed))) {
      return false;
    }
    if (slide.isBeyondJamb(audited.rig(), slide.pulledOut(item.block()))) {
      return true;
    }
    return closed.z().toMm() <= item.space().box().maxZMm()
        && isFreeAround(audited, item, slide, closed);
  }

  /** The module whose slide carries a space most closely; none for a fixed space. */
  private static Optional<AuditedModule> innermost(AuditCase audited, Space space) {
    if (space.movesWith().isEmpty()) {
      return Optional.empty();
    }
    String id = space.movesWith().get(0);
    return audited.modules().stream().filter(module -> module.id().equals(id)).findFirst();
  }

  /** What rides along stays above or beside the lid wherever the slide is. */
  private static boolean isFreeOnSlide(
      AuditCase audited, AuditedItem item, AuditedModule slide, Block closed) {
    for (AuditedItem other : audited.items()) {
      if (other.differsFrom(item)
          && other.space().movesWith().contains(slide.id())
          && other.block().sharesRoom(closed)) {
        return false;
      }
    }
    return true;
  }

  /** What does not ride along must be clear of the lid where it is opened. */
  private static boolean isFreeAround(
      AuditCase audited, AuditedItem item, AuditedModule slide, Block region) {
    for (AuditedItem other : audited.items()) {
      if (!other.space().movesWith().contains(slide.id()) && other.block().sharesRoom(region)) {
        return false;
      }
    }
    for (AuditedModule other : audited.modules()) {
      if (!belongsWith(other, slide, item.space()) && other.block().sharesRoom(region)) {
        return false;
      }
    }
    return !inside(audited.scenario())
        .filter(room -> region.sharesPlan(room) && region.z().toMm() > room.z().toMm())
        .isPresent();
  }

  /** Whether a module is the slide, holds it or the space, or rides on it. */
  private static boolean belongsWith(AuditedModule other, AuditedModule slide, Space space) {
    return other.id().equals(slide.id())
        || slide.fitted().inModules().contains(other.id())
        || space.inModules().contains(other.id())
        || other.fitted().movesWith().contains(slide.id());
  }

  /** Clear inside of the canopy, vehicle frame. */
  private static Optional<Block> inside(Scenario scenario) {
    return scenario.tray().flatMap(tray -> scenario.canopy().map(canopy -> inside(tray, canopy)));
  }

  private static Block inside(Tray tray, Canopy canopy) {
    LocalBoxMm local = canopy.inside();
    SizeMm size = local.size();
    int frontMm = tray.frontXMm() + canopy.fromTrayFrontMm() + local.aMm();
    int lowerMm = tray.deckZMm() + local.cMm();
    return new Block(
        new Span(frontMm, frontMm + size.lengthMm()),
        new Span(local.bMm(), local.bMm() + size.widthMm()),
        new Span(lowerMm, lowerMm + size.heightMm()));
  }
}
