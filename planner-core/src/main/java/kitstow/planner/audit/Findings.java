package kitstow.planner.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kitstow.planner.model.RuleId;

/** Gathers what is broken and keeps, for each rule and subject, the state that is worst. */
final class Findings {
  /**
   * Loads shared by levers and stacks are compared in doubles; half a gram covers their rounding.
   */
  private static final double SHARED_LOAD_TOLERANCE_G = 0.5;

  private final Map<Subject, Worst> worst = new LinkedHashMap<>();

  /**
   * Judges a load that is known exactly.
   *
   * @param load in parts of a gram
   * @param partsPerG how many parts make a gram, the same in every state of one subject
   */
  void limit(RuleId rule, String subject, String stateId, long load, long limitG, long partsPerG) {
    long over = load - limitG * partsPerG;
    if (over > 0L) {
      keep(
          new AuditFinding(
              rule, List.of(subject), stateId, (double) load / partsPerG, (double) limitG, "g"),
          over,
          (double) over / partsPerG);
    }
  }

  /** Judges a load that was shared out between several carriers, so is known but for rounding. */
  void sharedLimit(RuleId rule, String subject, String stateId, double loadG, long limitG) {
    if (loadG > (double) limitG + SHARED_LOAD_TOLERANCE_G) {
      keep(
          new AuditFinding(rule, List.of(subject), stateId, loadG, (double) limitG, "g"),
          0L,
          loadG - (double) limitG);
    }
  }

  /** Notes a rule that is judged once and is broken by a measure. */
  void broken(RuleId rule, List<String> subjects, double value, double limit, String unit) {
    keep(new AuditFinding(rule, subjects, "", value, limit, unit), 0L, Math.abs(value - limit));
  }

  /** Notes a rule that is judged once and has no measure. */
  void broken(RuleId rule, String... subjects) {
    broken(rule, List.of(subjects), 1.0, 0.0, "");
  }

  /** The two ids of a pair that has no first and second, in their natural order. */
  static List<String> pair(String one, String other) {
    return one.compareTo(other) <= 0 ? List.of(one, other) : List.of(other, one);
  }

  /** All findings by rule, then by subjects. */
  List<AuditFinding> inOrder() {
    List<AuditFinding> all = new ArrayList<>();
    for (Worst one : worst.values()) {
      all.add(one.finding());
    }
    all.sort(
        Comparator.comparing(AuditFinding::rule)
            .thenComparing(AuditFinding::subjectIds, Findings::compareIds));
    return all;
  }

  private void keep(AuditFinding finding, long overParts, double over) {
    worst.merge(
        new Subject(finding.rule(), finding.subjectIds()),
        new Worst(finding, overParts, over),
        (held, met) -> met.exceeds(held) ? met : held);
  }

  private static int compareIds(List<String> one, List<String> other) {
    int shared = Math.min(one.size(), other.size());
    for (int i = 0; i < shared; i++) {
      int order = one.get(i).compareTo(other.get(i));
      if (order != 0) {
        return order;
      }
    }
    return Integer.compare(one.size(), other.size());
  }

  private record Subject(RuleId rule, List<String> ids) {}

  /** A finding and by how much it is over; the exact parts decide where there are any. */
  private record Worst(AuditFinding finding, long overParts, double over) {
    boolean exceeds(Worst held) {
      return overParts == 0L ? over > held.over : overParts > held.overParts;
    }
  }
}
