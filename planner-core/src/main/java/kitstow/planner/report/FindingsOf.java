package kitstow.planner.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.RuleOverride;
import kitstow.planner.rules.Breach;
import kitstow.planner.rules.PlanRule;
import kitstow.planner.rules.Rule;
import kitstow.planner.rules.RuleBook;
import kitstow.planner.rules.RuleCard;
import kitstow.planner.rules.Situation;
import kitstow.planner.rules.SourceStatus;
import kitstow.planner.rules.StateCheck;
import kitstow.planner.rules.StateRule;
import kitstow.planner.statics.Margin;

/** Turns readings and breaches into findings, gravest first. */
final class FindingsOf {
  private final Situation situation;
  private final List<StateFigures> states;
  private final List<LimitReading> tightest;
  private final List<LimitReading> certification;
  private final Map<RuleId, RuleCard> cards = new EnumMap<>(RuleId.class);

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
      cards.put(rule.card().id(), rule.card());
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
            note(
                reading, "certification case: " + card(reading.rule()).title() + " does not hold"));
      }
    }
    findings.sort(Comparator.comparing(Finding::severity).thenComparing(Finding::rule));
    return List.copyOf(findings);
  }

  private Finding ofReading(LimitReading reading) {
    Margin margin = reading.margin();
    boolean over = margin.verdict() == Margin.Verdict.OVER;
    String heaviest = Contributors.heaviest(situation.loading(), reading);
    String message =
        over
            ? reading.subjectId()
                + " carries "
                + Amounts.up(margin.loadKg())
                + ", "
                + Amounts.up(-margin.marginKg())
                + " over its limit of "
                + Amounts.down(margin.limitKg())
                + (heaviest.isEmpty() ? "" : "; heaviest load on it: " + heaviest)
            : reading.subjectId()
                + " carries "
                + Amounts.up(margin.loadKg())
                + " of "
                + Amounts.down(margin.limitKg())
                + ", so "
                + Amounts.down(margin.marginKg())
                + " are left, less than the "
                + Amounts.up(margin.rssKg())
                + " by which its masses may be off";
    return new Finding(
        reading.rule(),
        over ? Finding.Severity.BROKEN : Finding.Severity.DOUBTFUL,
        reading.state().id(),
        List.of(reading.subjectId()),
        margin.loadKg(),
        margin.limitKg(),
        "kg",
        source(reading.rule()),
        status(reading.rule()),
        message,
        over
            ? "take " + Amounts.up(-margin.marginKg()) + " or more off it"
            : "weigh before relying on it" + weighFirst(reading),
        /* override= */ "");
  }

  private String weighFirst(LimitReading reading) {
    return WeighFirst.of(situation.loading(), reading)
        .map(
            one ->
                "; weighing "
                    + one.title()
                    + (one.bodyKeys().size() > 1 ? " (" + one.bodyKeys().size() + ")" : "")
                    + " tells most and narrows it to "
                    + Amounts.up(one.thenKg()))
        .orElse("");
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
        status(reading.rule()),
        message,
        "have the fit-out looked at by the certifying engineer",
        /* override= */ "");
  }

  private Finding ofBreach(Breach breach) {
    Optional<RuleOverride> override = override(breach.rule(), breach.subjectIds());
    Finding.Severity kept =
        breach.rule().binding() ? Finding.Severity.BROKEN : Finding.Severity.NOTE;
    return new Finding(
        breach.rule(),
        override.isPresent() ? Finding.Severity.OVERRIDDEN : kept,
        breach.stateId(),
        breach.subjectIds(),
        breach.value(),
        breach.limit(),
        breach.unit(),
        source(breach.rule()),
        status(breach.rule()),
        breach.what(),
        breach.mend(),
        override.map(RuleOverride::reason).orElse(""));
  }

  private Optional<RuleOverride> override(RuleId rule, List<String> subjectIds) {
    for (RuleOverride override : situation.loading().scenario().overrides()) {
      if (override.covers(rule, subjectIds)) {
        return Optional.of(override);
      }
    }
    return Optional.empty();
  }

  private void addWorstCheck(StateRule rule, List<Finding> findings) {
    StateCheck worst = null;
    StateFigures worstFigures = null;
    for (StateFigures figures : states) {
      for (StateCheck check : figures.checks()) {
        if (check.rule() == rule.card().id()
            && check.margin() < 0.0
            && (worst == null || check.margin() < worst.margin())) {
          worst = check;
          worstFigures = figures;
        }
      }
    }
    if (worst != null && worstFigures != null) {
      Optional<RuleOverride> override = override(worst.rule(), List.of(worst.subjectId()));
      findings.add(
          new Finding(
              worst.rule(),
              override.isPresent() ? Finding.Severity.OVERRIDDEN : Finding.Severity.NOTE,
              worstFigures.state().id(),
              List.of(worst.subjectId()),
              worst.value(),
              worst.limit(),
              worst.unit(),
              source(worst.rule()),
              status(worst.rule()),
              PracticeWords.message(rule.card().title(), worst, worstFigures, situation.loading()),
              PracticeWords.mend(worst, worstFigures),
              override.map(RuleOverride::reason).orElse("")));
    }
  }

  private String source(RuleId rule) {
    return card(rule).source();
  }

  private SourceStatus status(RuleId rule) {
    return card(rule).status();
  }

  private RuleCard card(RuleId rule) {
    RuleCard card = cards.get(rule);
    if (card == null) {
      throw new IllegalArgumentException("no such rule in the book: " + rule);
    }
    return card;
  }
}
