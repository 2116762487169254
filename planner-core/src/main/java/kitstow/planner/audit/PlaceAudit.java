package kitstow.planner.audit;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.model.Pin;
import kitstow.planner.model.Placement;
import kitstow.planner.model.RoofBars;
import kitstow.planner.model.RuleId;

/** Each item by itself: in its space, standing as it may, over two bars, where it is pinned. */
final class PlaceAudit {
  private PlaceAudit() {}

  static void judge(AuditCase audited, Findings findings) {
    for (AuditedItem item : audited.items()) {
      judgeInside(item, findings);
      Placement placement = item.placed().placement();
      if (!item.item().turns().contains(placement.turn())) {
        findings.broken(RuleId.TURN_ALLOWED, item.key());
      }
      if (item.onBareBars() && !liesOnTwoBars(item, item.space().bars().get())) {
        findings.broken(RuleId.TWO_BARS, item.key());
      }
      if (item.item().pin().filter(pin -> !keeps(placement, pin)).isPresent()) {
        findings.broken(RuleId.PIN_KEPT, item.key());
      }
    }
  }

  private static void judgeInside(AuditedItem item, Findings findings) {
    Block room = Block.of(item.space().box());
    if (item.space().bars().isPresent()) {
      RoofBars bars = item.space().bars().get();
      room =
          new Block(
              room.x().widened(bars.projectionFrontMm(), bars.projectionRearMm()),
              room.y().widened(bars.projectionSideMm(), bars.projectionSideMm()),
              room.z());
    }
    int outMm =
        Math.max(
            room.x().missedMm(item.block().x()),
            Math.max(room.y().missedMm(item.block().y()), room.z().missedMm(item.block().z())));
    if (outMm > 0) {
      findings.broken(
          RuleId.INSIDE_SPACE, List.of(item.key(), item.space().id()), outMm, 0.0, "mm");
    }
  }

  private static boolean liesOnTwoBars(AuditedItem item, RoofBars bars) {
    List<Integer> beneathMm = new ArrayList<>();
    for (RoofBars.Bar bar : bars.bars()) {
      int xMm = item.space().box().minXMm() + bar.fromFrontMm();
      if (item.block().x().holds(new Span(xMm, xMm))) {
        beneathMm.add(xMm);
      }
    }
    if (beneathMm.size() < 2) {
      return false;
    }
    long centre = item.block().x().doubledMiddleMm();
    long front = beneathMm.stream().mapToInt(Integer::intValue).min().orElse(0);
    long rear = beneathMm.stream().mapToInt(Integer::intValue).max().orElse(0);
    return 2L * front <= centre
        && centre <= 2L * rear
        && item.block().z().fromMm() == item.space().box().minZMm();
  }

  private static boolean keeps(Placement placement, Pin pin) {
    return pin.spaceId().equals(placement.spaceId())
        && pin.corner().map(placement.corner()::equals).orElse(true)
        && pin.turn().map(turn -> turn == placement.turn()).orElse(true);
  }
}
