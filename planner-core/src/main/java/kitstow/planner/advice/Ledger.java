package kitstow.planner.advice;

import java.util.LinkedHashMap;
import java.util.Map;
import kitstow.planner.model.LoadKind;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.RuleId;
import kitstow.planner.rules.Breach;
import kitstow.planner.rules.LimitRule;
import kitstow.planner.rules.PlanRule;
import kitstow.planner.rules.RuleBook;
import kitstow.planner.rules.Situation;
import kitstow.planner.statics.LoadLine;

/**
 * What a plan breaks and by how much, by the key of the finding: kilograms over for limits, the
 * distance from what is allowed for all other rules.
 */
final class Ledger {
  private final Map<String, Double> amounts = new LinkedHashMap<>();

  private Ledger() {}

  static Ledger of(Situation situation) {
    Ledger ledger = new Ledger();
    for (PlanRule rule : RuleBook.PLAN_RULES) {
      if (rule.card().id().binding()) {
        for (Breach breach : rule.breaches(situation)) {
          ledger.add(breach.key(), Math.abs(breach.value() - breach.limit()));
        }
      }
    }
    for (LoadState state : situation.judgedStates()) {
      if (state.kind() != LoadKind.CERTIFICATION) {
        for (LimitRule rule : RuleBook.LIMITS) {
          ledger.addOver(situation, state, rule);
        }
      }
    }
    return ledger;
  }

  private void addOver(Situation situation, LoadState state, LimitRule rule) {
    for (LoadLine line : situation.lines(rule, state)) {
      if (line.over(state)) {
        add(key(line.rule(), line.subjectId()), line.loadG(state) / 1e3 - line.limitG() / 1e3);
      }
    }
  }

  private static String key(RuleId rule, String subjectId) {
    return rule + " " + subjectId;
  }

  private void add(String key, double amount) {
    amounts.merge(key, amount, Math::max);
  }

  /** By how much a rule is broken; zero if it is not. */
  double amount(String key) {
    return amounts.getOrDefault(key, 0.0);
  }

  boolean broken(String key) {
    return amounts.containsKey(key);
  }

  /** Whether nothing but the one finding is broken that was not before, and nothing by more. */
  boolean noWorseThan(Ledger before, String key) {
    for (Map.Entry<String, Double> entry : amounts.entrySet()) {
      boolean worse =
          !before.broken(entry.getKey())
              || entry.getValue() > before.amount(entry.getKey()) + 1.0e-9;
      if (worse && !entry.getKey().equals(key)) {
        return false;
      }
    }
    return true;
  }
}
