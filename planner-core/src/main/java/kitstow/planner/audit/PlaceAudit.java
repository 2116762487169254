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
      if (item.space().bars().filter(bars -> !liesOnTwoBars(item, bars)).isPresent()) {
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

  /**
   * Whether an item's middle is between two bars that carry it, and over the space. On bare bars
   * they must be right beneath it; a floor is carried by all.
   */
  private static boolean liesOnTwoBars(AuditedItem item, RoofBars bars) {
    List<Integer> carryingMm = new ArrayList<>();
    for (RoofBars.Bar bar : bars.bars()) {
      int xMm = item.space().box().minXMm() + bar.fromFrontMm();
      if (bars.platformFloor() || item.block().x().holds(new Span(xMm, xMm))) {
        carryingMm.add(xMm);
      }
    }
    if (carryingMm.size() < 2) {
      return false;
    }
    long centre = item.block().x().doubledMiddleMm();
    long front = carryingMm.stream().mapToInt(Integer::intValue).min().orElse(0);
    long rear = carryingMm.stream().mapToInt(Integer::intValue).max().orElse(0);
    Block room = Block.of(item.space().box());
    long across = item.block().y().doubledMiddleMm();
    return 2L * front <= centre
        && centre <= 2L * rear
        && 2L * room.y().fromMm() <= across
        && across <= 2L * room.y().toMm()
        && (bars.platformFloor() || item.block().z().fromMm() == room.z().fromMm());
  }

  private static boolean keeps(Placement placement, Pin pin) {
    return pin.spaceId().equals(placement.spaceId())
        && pin.corner().map(placement.corner()::equals).orElse(true)
        && pin.turn().map(turn -> turn == placement.turn()).orElse(true);
  }
}
