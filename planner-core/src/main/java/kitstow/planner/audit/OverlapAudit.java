package kitstow.planner.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import kitstow.planner.model.RuleId;

/**
 * No two items share volume, whatever their spaces. Walks the items from the front of the vehicle
 * to the rear and keeps a list of those whose stretch of x is still open.
 */
final class OverlapAudit {
  private OverlapAudit() {}

  static void judge(AuditCase audited, Findings findings) {
    List<AuditedItem> fromFront = new ArrayList<>(audited.items());
    fromFront.sort(Comparator.comparingInt(item -> item.block().x().fromMm()));
    List<AuditedItem> open = new ArrayList<>();
    for (AuditedItem next : fromFront) {
      open.removeIf(item -> item.block().x().toMm() <= next.block().x().fromMm());
      for (AuditedItem item : open) {
        long depthMm = item.block().depthInMm(next.block());
        if (depthMm > 0L) {
          findings.broken(
              RuleId.NO_OVERLAP,
              Findings.pair(item.key(), next.key()),
              (double) depthMm,
              0.0,
              "mm");
        }
      }
      open.add(next);
    }
  }
}
