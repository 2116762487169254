package kitstow.planner.audit;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kitstow.planner.model.AccessAxis;
import kitstow.planner.model.Mark;
import kitstow.planner.model.Reach;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Space;
import kitstow.planner.model.Zone;

/** Emergency gear comes out of its space without moving anything else; the cab holds its own. */
final class ReachAudit {
  private ReachAudit() {}

  static void judge(AuditCase audited, Findings findings) {
    for (AuditedItem item : audited.items()) {
      if (item.item().marks().contains(Mark.CAB) && item.space().zone() != Zone.CAB) {
        findings.broken(RuleId.CAB_REACH, item.key(), item.space().id());
      }
      if (item.item().reach() == Reach.EMERGENCY) {
        int toMove = inTheWay(item, audited.withIts(item));
        if (toMove > 0) {
          findings.broken(
              RuleId.EMERGENCY_REACH, List.of(item.key()), toMove, 0.0, "things to move");
        }
      }
    }
  }

  /**
   * How many items go first: those on its way out and, whichever way that is, all that stands on
   * it, however high.
   */
  private static int inTheWay(AuditedItem item, List<AuditedItem> spaceful) {
    Set<String> keys = new HashSet<>();
    Optional<Block> way = wayOut(item);
    for (AuditedItem other : spaceful) {
      boolean blocks =
          way.map(room -> room.depthInMm(other.block()) > 0L).orElseGet(() -> other.isOver(item));
      if (blocks && other.differsFrom(item)) {
        keys.add(other.key());
      }
    }
    Deque<AuditedItem> beneath = new ArrayDeque<>();
    beneath.add(item);
    while (!beneath.isEmpty()) {
      AuditedItem lower = beneath.remove();
      for (AuditedItem other : spaceful) {
        if (other.differsFrom(item) && other.standsOn(lower)) {
          keys.add(other.key());
          beneath.add(other);
        }
      }
    }
    return keys.size();
  }

  /**
   * The room between an item and the side of the space it comes out of; none where it is lifted
   * out. A drawer or slide is emptied from above when it is out.
   */
  private static Optional<Block> wayOut(AuditedItem item) {
    Space space = item.space();
    AccessAxis axis = space.movesWith().isEmpty() ? space.access() : AccessAxis.ABOVE;
    Block room = Block.of(space.box());
    Block own = item.block();
    return switch (axis) {
      case ABOVE -> Optional.empty();
      case LEFT ->
          Optional.of(own.with(Block.Axis.Y, stretch(room.y().fromMm(), own.y().fromMm())));
      case RIGHT -> Optional.of(own.with(Block.Axis.Y, stretch(own.y().toMm(), room.y().toMm())));
      case FRONT ->
          Optional.of(own.with(Block.Axis.X, stretch(room.x().fromMm(), own.x().fromMm())));
      case REAR -> Optional.of(own.with(Block.Axis.X, stretch(own.x().toMm(), room.x().toMm())));
      case FACE ->
          throw new IllegalArgumentException("space " + space.id() + " has no side to reach it");
    };
  }

  /** An item that reaches out of its space has nothing of the space before it. */
  private static Span stretch(int fromMm, int toMm) {
    return new Span(Math.min(fromMm, toMm), toMm);
  }
}
