package kitstow.planner.audit;

import java.util.List;
import java.util.Optional;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.Canopy;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.Tray;
import kitstow.planner.model.Zone;

/** What does not ride in the canopy stays clear of its body: on it, beside it or behind it. */
final class CanopyAudit {
  private CanopyAudit() {}

  static void judge(AuditCase audited, Findings findings) {
    outside(audited.scenario()).ifPresent(canopy -> judge(audited, canopy, findings));
  }

  private static void judge(AuditCase audited, Block canopy, Findings findings) {
    for (AuditedItem item : audited.items()) {
      judge(item.key(), item.space().zone(), item.block(), canopy, findings);
    }
    for (AuditedModule module : audited.modules()) {
      judge(module.id(), module.fitted().bay().zone(), module.block(), canopy, findings);
    }
  }

  private static void judge(
      String subject, Zone zone, Block block, Block canopy, Findings findings) {
    long depthMm = zone == Zone.CANOPY ? 0L : block.depthInMm(canopy);
    if (depthMm > 0L) {
      findings.broken(RuleId.CANOPY_CLASH, List.of(subject), (double) depthMm, 0.0, "mm");
    }
  }

  /** Outside of the canopy, vehicle frame: on the deck, in the middle of the ute. */
  private static Optional<Block> outside(Scenario scenario) {
    return scenario.tray().flatMap(tray -> scenario.canopy().map(canopy -> outside(tray, canopy)));
  }

  private static Block outside(Tray tray, Canopy canopy) {
    SizeMm size = canopy.size();
    int frontMm = tray.frontXMm() + canopy.fromTrayFrontMm();
    int leftMm = -(size.widthMm() / 2);
    return new Block(
        new Span(frontMm, frontMm + size.lengthMm()),
        new Span(leftMm, leftMm + size.widthMm()),
        new Span(tray.deckZMm(), tray.deckZMm() + size.heightMm()));
  }
}
