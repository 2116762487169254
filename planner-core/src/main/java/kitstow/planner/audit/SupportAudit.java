package kitstow.planner.audit;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.model.RuleId;

/** Enough of each base rests on something, and its middle is over what it rests on. */
final class SupportAudit {
  private SupportAudit() {}

  static void judge(AuditCase audited, Findings findings) {
    int leastPermille = audited.scenario().settings().supportPermille();
    for (AuditedItem item : audited.items()) {
      if (item.onBareBars()) {
        continue;
      }
      List<Contact> contacts = Contact.beneath(item, audited.withIts(item));
      long restingMm2 = Contact.areaMm2(contacts);
      long baseMm2 = item.block().planMm2();
      boolean enough = restingMm2 * 1000L >= leastPermille * baseMm2;
      if (!enough || !isMiddleOver(contacts, item.block())) {
        findings.broken(
            RuleId.SUPPORT,
            List.of(item.key()),
            1000.0 * restingMm2 / baseMm2,
            leastPermille,
            "permille");
      }
    }
  }

  /**
   * Whether the middle of the base lies in or on the hull of the contacts. It lies outside exactly
   * if, seen from the middle, some corner has all others on its left: a tangent. Corners on the
   * tangent itself must then lie on one side of the middle; a corner behind it would enclose it.
   */
  static boolean isMiddleOver(List<Contact> contacts, Block base) {
    List<long[]> rays = new ArrayList<>();
    for (Contact contact : contacts) {
      for (long x : new long[] {contact.x().fromMm(), contact.x().toMm()}) {
        for (long y : new long[] {contact.y().fromMm(), contact.y().toMm()}) {
          // Doubled, so that the middle is whole.
          rays.add(
              new long[] {
                2L * x - base.x().doubledMiddleMm(), 2L * y - base.y().doubledMiddleMm()
              });
        }
      }
    }
    for (long[] ray : rays) {
      if (isTangent(ray, rays)) {
        return false;
      }
    }
    return !rays.isEmpty();
  }

  private static boolean isTangent(long[] ray, List<long[]> rays) {
    for (long[] other : rays) {
      long cross = ray[0] * other[1] - ray[1] * other[0];
      long dot = ray[0] * other[0] + ray[1] * other[1];
      if (cross < 0L || (cross == 0L && dot <= 0L)) {
        return false;
      }
    }
    return true;
  }
}
