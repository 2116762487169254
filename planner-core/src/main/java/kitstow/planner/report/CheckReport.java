package kitstow.planner.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kitstow.planner.model.RuleId;
import kitstow.planner.rules.Situation;
import kitstow.planner.statics.HighestCentre;

/**
 * What a plan is worth: figures of every state, the tightest reading of every limit, findings and
 * the verdict. The certification case is kept apart and decides nothing.
 */
public final class CheckReport {
  private final Situation situation;
  private final List<StateFigures> states;
  private final List<LimitReading> tightest;
  private final List<LimitReading> certification;
  private final List<Finding> findings;
  private final Verdict verdict;

  private CheckReport(Situation situation) {
    this.situation = situation;
    List<StateFigures> figures = new ArrayList<>();
    situation.timeline().states().forEach(s -> figures.add(StateFigures.of(situation, s)));
    this.states = List.copyOf(figures);
    this.tightest = tightestOf(states, /* certification= */ false);
    this.certification = tightestOf(states, /* certification= */ true);
    this.verdict = Verdict.of(tightest);
    this.findings = new FindingsOf(situation, states, tightest, certification).all();
  }

  /** Judges a situation. */
  public static CheckReport of(Situation situation) {
    return new CheckReport(situation);
  }

  /** The tightest reading of every limit, the one with the largest used share first. */
  private static List<LimitReading> tightestOf(List<StateFigures> states, boolean certification) {
    Map<String, LimitReading> worst = new LinkedHashMap<>();
    for (StateFigures figures : states) {
      for (LimitReading reading : figures.limits()) {
        if (reading.certification() == certification) {
          worst.merge(reading.key(), reading, CheckReport::tighter);
        }
      }
    }
    List<LimitReading> sorted = new ArrayList<>(worst.values());
    sorted.sort(Comparator.comparingDouble((LimitReading r) -> r.margin().usedRatio()).reversed());
    return List.copyOf(sorted);
  }

  /** The graver verdict, then the larger used share. */
  private static LimitReading tighter(LimitReading old, LimitReading now) {
    int graver = now.margin().verdict().compareTo(old.margin().verdict());
    if (graver != 0) {
      return graver > 0 ? now : old;
    }
    return now.margin().usedRatio() > old.margin().usedRatio() ? now : old;
  }

  /** What was judged. */
  public Situation situation() {
    return situation;
  }

  /** Figures of every state, in the order of the trip. */
  public List<StateFigures> states() {
    return states;
  }

  /** The tightest reading of every limit over all states, tightest first. */
  public List<LimitReading> tightest() {
    return tightest;
  }

  /** The same for the certification case. */
  public List<LimitReading> certification() {
    return certification;
  }

  /** Findings, gravest first. */
  public List<Finding> findings() {
    return findings;
  }

  /** The one-line answer on mass limits. */
  public Verdict verdict() {
    return verdict;
  }

  /** Whether any rule is broken. */
  public boolean broken() {
    return !brokenFindings().isEmpty();
  }

  /** Findings of broken rules. */
  public List<Finding> brokenFindings() {
    List<Finding> broken = new ArrayList<>();
    for (Finding finding : findings) {
      if (finding.severity() == Finding.Severity.BROKEN) {
        broken.add(finding);
      }
    }
    return broken;
  }

  /** Findings of rules that are not kept, for a written reason. */
  public List<Finding> overriddenFindings() {
    List<Finding> overridden = new ArrayList<>();
    for (Finding finding : findings) {
      if (finding.severity() == Finding.Severity.OVERRIDDEN) {
        overridden.add(finding);
      }
    }
    return overridden;
  }

  /** How many rules are broken, however often each. */
  public int brokenRules() {
    Set<RuleId> rules = EnumSet.noneOf(RuleId.class);
    brokenFindings().forEach(finding -> rules.add(finding.rule()));
    return rules.size();
  }

  /** The highest centre of mass while moving, inside the stretches between states too. */
  public Optional<HighestCentre> highestCentre() {
    return HighestCentre.of(situation.loading(), situation.timeline());
  }

  /** The moving state with the largest rear overhang moment. */
  public Optional<StateFigures> worstMoment() {
    StateFigures worst = null;
    for (StateFigures figures : states) {
      if (figures.moving()
          && (worst == null || figures.moment().halfGMm() > worst.moment().halfGMm())) {
        worst = figures;
      }
    }
    return Optional.ofNullable(worst);
  }
}
