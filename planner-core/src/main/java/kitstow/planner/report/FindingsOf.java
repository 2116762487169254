package kitstow.planner.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import kitstow.planner.model.RuleId;
import kitstow.planner.rules.Breach;
import kitstow.planner.rules.PlanRule;
import kitstow.planner.rules.Rule;
import kitstow.planner.rules.RuleBook;
import kitstow.planner.rules.Situation;
import kitstow.planner.rules.StateCheck;
import kitstow.planner.rules.StateRule;
import kitstow.planner.statics.Margin;

/** Turns readings and breaches into findings, gravest first. */
final class FindingsOf {
  private final Situation situation;
  private final List<StateFigures> states;
  private final List<LimitReading> tightest;
  private final List<LimitReading> certification;
  private final Map<RuleId, String> sources = new LinkedHashMap<>();
  private final Map<RuleId, String> titles = new LinkedHashMap<>();

  FindingsOf(
      Situation situation,
      List<StateFigures> states,
      List<LimitReading> tightest,
      List<LimitReading> certification) {
    this.situation = situation;
    this.states = states;
    this.tightest = tightest;
    this.certification = certification;
    List<Rule> rules = new ArrayList<>();
    rules.addAll(RuleBook.LIMITS);
    rules.addAll(RuleBook.PLAN_RULES);
    rules.addAll(RuleBook.STATE_RULES);
    for (Rule rule : rules) {
      sources.put(rule.card().id(), rule.card().source());
      titles.put(rule.card().id(), rule.card().title());
    }
  }

  List<Finding> all() {
    List<Finding> findings = new ArrayList<>();
    for (LimitReading reading : tightest) {
      if (reading.margin().verdict() != Margin.Verdict.WITHIN) {
        findings.add(ofReading(reading));
      }
    }
    for (PlanRule rule : RuleBook.PLAN_RULES) {
      for (Breach breach : rule.breaches(situation)) {
        findings.add(ofBreach(breach));
      }
    }
    for (StateRule rule : RuleBook.STATE_RULES) {
      addWorstCheck(rule, findings);
    }
    for (LimitReading reading : certification) {
      if (reading.margin().verdict() == Margin.Verdict.OVER) {
        findings.add(
            note(reading, "certification case: " + titles.get(reading.rule()) + " does not hold"));
      }
    }
    findings.sort(Comparator.comparing(Finding::severity).thenComparing(Finding::rule));
    return List.copyOf(findings);
  }

  private Finding ofReading(LimitReading reading) {
    Margin margin = reading.margin();
    boolean over = margin.verdict() == Margin.Verdict.OVER;
    String message =
        over
            ? reading.subjectId()
                + " carries "
                + kg(margin.loadKg(), /* up= */ true)
                + " kg, "
                + kg(-margin.marginKg(), /* up= */ true)
                + " kg over its limit of "
                + kg(margin.limitKg(), /* up= */ false)
                + " kg"
            : reading.subjectId()
                + " has "
                + kg(margin.marginKg(), /* up= */ false)
                + " kg left, less than the "
                + kg(margin.rssKg(), /* up= */ true)
                + " kg by which its masses may be off";
    return new Finding(
        reading.rule(),
        over ? Finding.Severity.BROKEN : Finding.Severity.DOUBTFUL,
        reading.state().id(),
        List.of(reading.subjectId()),
        margin.loadKg(),
        margin.limitKg(),
        "kg",
        source(reading.rule()),
        message,
        over
            ? "take " + kg(-margin.marginKg(), /* up= */ true) + " kg or more off this limit"
            : "weigh before relying on it");
  }

  private Finding note(LimitReading reading, String message) {
    return new Finding(
        reading.rule(),
        Finding.Severity.NOTE,
        reading.state().id(),
        List.of(reading.subjectId()),
        reading.margin().loadKg(),
        reading.margin().limitKg(),
        "kg",
        source(reading.rule()),
        message,
        "have the fit-out looked at by the certifying engineer");
  }

  private Finding ofBreach(Breach breach) {
    return new Finding(
        breach.rule(),
        breach.rule().binding() ? Finding.Severity.BROKEN : Finding.Severity.NOTE,
        breach.stateId(),
        breach.subjectIds(),
        breach.value(),
        breach.limit(),
        breach.unit(),
        source(breach.rule()),
        breach.what(),
        breach.mend());
  }

  private void addWorstCheck(StateRule rule, List<Finding> findings) {
    StateCheck worst = null;
    String stateId = "";
    for (StateFigures figures : states) {
      for (StateCheck check : figures.checks()) {
        if (check.rule() == rule.card().id()
            && check.margin() < 0.0
            && (worst == null || check.margin() < worst.margin())) {
          worst = check;
          stateId = figures.state().id();
        }
      }
    }
    if (worst != null) {
      findings.add(
          new Finding(
              worst.rule(),
              Finding.Severity.NOTE,
              stateId,
              List.of(worst.subjectId()),
              worst.value(),
              worst.limit(),
              worst.unit(),
              source(worst.rule()),
              rule.card().title() + ": not kept",
              "move heavy things forward and towards the centre plane"));
    }
  }

  private String source(RuleId rule) {
    return sources.getOrDefault(rule, "");
  }

  /** One decimal, loads up and margins down. */
  private static String kg(double value, boolean up) {
    double tenths = value * 10.0;
    double rounded = up ? Math.ceil(tenths - 1e-6) : Math.floor(tenths + 1e-6);
    return String.format(Locale.ROOT, "%.1f", rounded / 10.0);
  }
}
