package kitstow.planner.json;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.RuleOverride;
import kitstow.planner.problem.Code;
import kitstow.planner.rules.RuleBook;
import kitstow.planner.rules.RuleCard;

/** Reads which rules are not kept, what for and why. */
final class OverrideReader {
  private final Known known;

  OverrideReader(Known known) {
    this.known = known;
  }

  List<RuleOverride> read(Fields scenario) {
    List<RuleOverride> overrides = new ArrayList<>();
    for (Fields fields : scenario.objectsIfGiven("overrides")) {
      String name = fields.text("rule", "name a rule that may be overridden");
      List<String> subjects = fields.namesIfGiven("subjects");
      String reason = fields.text("reason", "write why the rule is not kept here");
      fields.done();
      Names names = known.subjects();
      for (String subject : subjects) {
        int unit = subject.indexOf('#');
        names.check(unit < 0 ? subject : subject.substring(0, unit), fields.place("subjects"));
      }
      rule(name, fields).ifPresent(rule -> overrides.add(new RuleOverride(rule, subjects, reason)));
    }
    return overrides;
  }

  private static Optional<RuleId> rule(String name, Fields fields) {
    Set<String> may = new TreeSet<>();
    for (RuleCard card : RuleBook.cards()) {
      if (card.overridable()) {
        may.add(card.id().name());
      }
    }
    if (may.contains(name)) {
      return Optional.of(RuleId.valueOf(name));
    }
    if (fields.good("rule")) {
      fields.error(
          Code.NOT_OVERRIDABLE,
          "rule",
          "is " + Shown.quoted(name) + ", must be one of " + Shown.list(may),
          "all other rules hold always");
    }
    return Optional.empty();
  }
}
