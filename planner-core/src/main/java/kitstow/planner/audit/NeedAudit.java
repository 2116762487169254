package kitstow.planner.audit;

import kitstow.planner.model.Item;
import kitstow.planner.model.ModuleChoice;
import kitstow.planner.model.Need;
import kitstow.planner.model.RuleId;

/** What must come along is along. */
final class NeedAudit {
  private NeedAudit() {}

  static void judge(AuditCase audited, Findings findings) {
    for (Item item : audited.scenario().items()) {
      for (int unit = 1; item.need() == Need.MUST && unit <= item.quantity(); unit++) {
        if (!audited.loading().placed().containsKey(item.keyOf(unit))) {
          findings.broken(RuleId.MUST_TAKE, item.keyOf(unit));
        }
      }
    }
    for (ModuleChoice choice : audited.scenario().modules()) {
      if (choice.need() == Need.MUST
          && !audited.rig().modules().containsKey(choice.module().id())) {
        findings.broken(RuleId.MUST_TAKE, choice.module().id());
      }
    }
  }
}
