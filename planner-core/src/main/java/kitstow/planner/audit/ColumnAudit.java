package kitstow.planner.audit;

import java.util.List;
import kitstow.planner.model.RuleId;

/** Nothing of the same space is over an item that may carry nothing, at any height. */
final class ColumnAudit {
  private ColumnAudit() {}

  static void judge(AuditCase audited, Findings findings) {
    for (List<AuditedItem> spaceful : audited.spacefuls()) {
      for (AuditedItem item : spaceful) {
        // On bare bars nothing is stacked, whatever it may bear.
        if (item.item().bearsG() == 0L || item.onBareBars()) {
          for (AuditedItem other : spaceful) {
            if (other.differsFrom(item) && other.isOver(item)) {
              findings.broken(RuleId.CLEAR_COLUMN, item.key(), other.key());
            }
          }
        }
      }
    }
  }
}
