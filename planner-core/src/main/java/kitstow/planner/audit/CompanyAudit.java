package kitstow.planner.audit;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import kitstow.planner.model.Environment;
import kitstow.planner.model.Item;
import kitstow.planner.model.Mark;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Space;
import kitstow.planner.model.Zone;

/** What may not ride together, only in the open or vented to it, not in the open, on no roof. */
final class CompanyAudit {
  private static final List<Set<Mark>> FORBIDDEN =
      List.of(
          EnumSet.of(Mark.FOOD, Mark.FUEL),
          EnumSet.of(Mark.FOOD, Mark.OIL),
          EnumSet.of(Mark.FOOD, Mark.WET),
          EnumSet.of(Mark.FUEL, Mark.GAS),
          EnumSet.of(Mark.FUEL, Mark.ELECTRIC),
          EnumSet.of(Mark.FUEL, Mark.FRAGILE),
          EnumSet.of(Mark.GAS, Mark.ELECTRIC),
          EnumSet.of(Mark.GAS, Mark.FRAGILE),
          EnumSet.of(Mark.ELECTRIC, Mark.WET),
          EnumSet.of(Mark.HEAVY_TOOL, Mark.FOOD),
          EnumSet.of(Mark.HEAVY_TOOL, Mark.GAS),
          EnumSet.of(Mark.HEAVY_TOOL, Mark.ELECTRIC),
          EnumSet.of(Mark.HEAVY_TOOL, Mark.FRAGILE),
          EnumSet.of(Mark.BEDDING, Mark.FUEL),
          EnumSet.of(Mark.BEDDING, Mark.OIL),
          EnumSet.of(Mark.BEDDING, Mark.WET));

  /** Fumes and leaking gas reach as far as the air of the space does. */
  private static final Set<Mark> FILLS_THE_AIR = EnumSet.of(Mark.FUEL, Mark.GAS);

  /** A vent takes nothing outside from a locker that shares its air with the box or the cab. */
  private static final Set<String> SHARED_AIR = Set.of("air:canopy", "air:cab");

  private static final Set<Zone> ROOFS = EnumSet.of(Zone.CAB_ROOF, Zone.CANOPY_ROOF);

  private CompanyAudit() {}

  static void judge(AuditCase audited, Findings findings) {
    List<AuditedItem> items = audited.items();
    for (int i = 0; i < items.size(); i++) {
      AuditedItem item = items.get(i);
      for (AuditedItem later : items.subList(i + 1, items.size())) {
        if (mayMeet(item, later)
            && FORBIDDEN.stream().anyMatch(marks -> meet(marks, item, later))) {
          findings.broken(
              RuleId.FORBIDDEN_PAIR, Findings.pair(item.key(), later.key()), 1.0, 0.0, "");
        }
      }
      judgeAir(RuleId.GAS_OUTSIDE, Mark.GAS, item, findings);
      judgeAir(RuleId.FUEL_OUTSIDE, Mark.FUEL, item, findings);
      judgeWeather(item, findings);
      judgeRoof(item, audited.scenario().settings().roofGearG(), findings);
    }
  }

  /** Whether any pair could be brought together at all. */
  private static boolean mayMeet(AuditedItem one, AuditedItem other) {
    boolean marked = !one.item().marks().isEmpty() && !other.item().marks().isEmpty();
    return marked
        && (one.space().airId().equals(other.space().airId())
            || one.space().id().equals(other.space().id()));
  }

  /** Whether two items bring the two marks of a pair together. */
  private static boolean meet(Set<Mark> marks, AuditedItem one, AuditedItem other) {
    boolean together =
        marks.stream().anyMatch(FILLS_THE_AIR::contains)
            ? one.space().airId().equals(other.space().airId())
            : one.space().id().equals(other.space().id());
    return together
        && marks.stream().anyMatch(mark -> split(marks, mark, one.item(), other.item()));
  }

  /** Whether one item has a mark of the pair and the other item has the other mark. */
  private static boolean split(Set<Mark> marks, Mark mark, Item one, Item other) {
    return one.marks().contains(mark)
        && marks.stream().anyMatch(rest -> rest != mark && other.marks().contains(rest));
  }

  private static void judgeAir(RuleId rule, Mark mark, AuditedItem item, Findings findings) {
    Space space = item.space();
    boolean outside =
        space.environment().contains(Environment.OPEN_AIR)
            || (space.environment().contains(Environment.VENTED_OUTSIDE)
                && !SHARED_AIR.contains(space.airId()));
    if (item.item().marks().contains(mark) && !outside) {
      findings.broken(rule, item.key(), space.id());
    }
  }

  private static void judgeWeather(AuditedItem item, Findings findings) {
    boolean rainedOn = item.space().environment().contains(Environment.OPEN_AIR);
    if (rainedOn && item.item().marks().contains(Mark.DRY)) {
      findings.broken(RuleId.UNDER_COVER, item.key(), item.space().id());
    }
  }

  /** A bulky thing may go up at any mass; anything else counts with rubbish and rain in it. */
  private static void judgeRoof(AuditedItem item, long allowedG, Findings findings) {
    if (!ROOFS.contains(item.space().zone()) || item.item().marks().contains(Mark.BULKY)) {
      return;
    }
    long mostG = item.item().mass().massG();
    if (item.item().growth().isPresent()) {
      mostG += item.item().growth().get().upToG();
      mostG += item.item().growth().get().wetG();
    }
    if (mostG > allowedG) {
      findings.broken(
          RuleId.ROOF_GEAR,
          List.of(item.key(), item.space().id()),
          (double) mostG,
          (double) allowedG,
          "g");
    }
  }
}
