package kitstow.planner.solver;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.Settings;

/** What several searches find on one rig, over time. */
final class RigQuality {
  /** Times at which a run is looked at, seconds. */
  static final double[] MARKS = {1.0, 3.0, 10.0, 30.0};

  /** How near the best is near enough. */
  private static final double NEAR = 0.01;

  private static final double GRAMS_OF_LUCK = 1_000.0;

  private final BenchRig rig;
  private final Scenario scenario;
  private final PackingProblem problem;
  private final double seconds;
  private final KnownBests known;
  private final List<TimedSearch> runs = new ArrayList<>();
  private final List<TimedSearch> longer = new ArrayList<>();

  /**
   * A rig on which nothing has run yet.
   *
   * @param seconds length of its runs
   * @param known what runs of other days have found
   */
  RigQuality(BenchRig rig, double seconds, KnownBests known) {
    this.rig = rig;
    this.scenario = rig.scenario();
    this.seconds = seconds;
    this.known = known;
    this.problem = new PackingProblem(scenario);
    PlanSearch.construct(problem, null);
  }

  /** Runs one search more. */
  void run(long seed) {
    TimedSearch run = TimedSearch.of(scenario, seed, seconds);
    synchronized (runs) {
      runs.add(run);
    }
  }

  /** Runs one longer search more, of which only the best plan counts. */
  void runLonger(long seed, double longerSeconds) {
    TimedSearch run = TimedSearch.of(scenario, seed, longerSeconds);
    synchronized (longer) {
      longer.add(run);
    }
  }

  /** The table's head. */
  static String head() {
    return "| Rig | units | best: home, moment N·m | best of all days N·m"
        + " | 1 s | 3 s | 10 s | 30 s | s to within 1 % |\n"
        + "|---|---|---|---|---|---|---|---|---|";
  }

  /** Seconds until a run was near the best of all runs, run by run; never is all its time. */
  List<Double> secondsToNear() {
    ScoreLevels best = bestLevels();
    List<Double> times = new ArrayList<>();
    for (TimedSearch run : runs) {
      times.add(run.firstAt(plan -> isNear(levels(plan), best)).orElse(seconds));
    }
    times.sort(Comparator.naturalOrder());
    return times;
  }

  /** The table's row; the best plan is judged and audited for it. */
  String row() {
    LoadPlan best = best();
    double momentNm =
        AssertedSearch.judged(scenario, best)
            .worstMoment()
            .map(figures -> figures.moment().newtonMetres())
            .orElse(0.0);
    StringBuilder row = new StringBuilder("| " + rig.name() + " | " + problem.units().size());
    int home = problem.units().size() - best.placements().size();
    double bestSteps = bestLevels().momentSteps();
    double bestNm = bestSteps * problem.stepNm();
    row.append(String.format(Locale.ROOT, " | %d, %.0f | %.0f", home, momentNm, bestNm));
    for (double mark : MARKS) {
      row.append(mark <= seconds ? " | " + cell(mark, best, bestSteps) : " | -");
    }
    row.append(String.format(Locale.ROOT, " | %.1f", median(secondsToNear())));
    return row + " |";
  }

  /** Units more at home than in the best plan of today, and moment above the best of all days. */
  private String cell(double mark, LoadPlan best, double bestSteps) {
    List<Double> home = new ArrayList<>();
    List<Double> above = new ArrayList<>();
    for (TimedSearch run : runs) {
      Optional<LoadPlan> plan = run.at(mark);
      home.add(
          plan.map(one -> (double) best.placements().size() - one.placements().size())
              .orElse(Double.POSITIVE_INFINITY));
      above.add(
          plan.map(one -> 100.0 * (levels(one).momentSteps() / bestSteps - 1.0))
              .orElse(Double.NaN));
    }
    home.sort(Comparator.naturalOrder());
    above.sort(Comparator.naturalOrder());
    return String.format(Locale.ROOT, "%+.1f, %+.1f %%", median(home), median(above));
  }

  /** Keeps the best for other days. */
  void remember() {
    known.offer(rig, levels(best()), problem.stepNm());
  }

  /** What the best run of all has reached, today or before. */
  private ScoreLevels bestLevels() {
    ScoreLevels today = levels(best());
    Settings.MassLimits massLimits = scenario.settings().massLimits();
    return known
        .of(rig, problem.stepNm())
        .filter(before -> before.toScore(massLimits).compareTo(today.toScore(massLimits)) > 0)
        .orElse(today);
  }

  private LoadPlan best() {
    LoadPlan best = null;
    List<TimedSearch> all = new ArrayList<>(runs);
    all.addAll(longer);
    for (TimedSearch run : all) {
      best = best == null || isBetter(run.last(), best) ? run.last() : best;
    }
    if (best == null) {
      throw new IllegalStateException("no run as yet");
    }
    return best;
  }

  private boolean isBetter(LoadPlan one, LoadPlan other) {
    Settings.MassLimits massLimits = scenario.settings().massLimits();
    return levels(one).toScore(massLimits).compareTo(levels(other).toScore(massLimits)) > 0;
  }

  private ScoreLevels levels(LoadPlan plan) {
    return PlainScore.levels(problem, plan, /* refused= */ 0);
  }

  /** A hundredth more overload, value left or moment at most. */
  private boolean isNear(ScoreLevels one, ScoreLevels best) {
    long allValue = 0L;
    for (int unit = 0; unit < problem.units().size(); unit++) {
      allValue += problem.costAtHome(unit, Aim.ALL);
    }
    return one.mustLeft() <= best.mustLeft()
        && one.overG() <= (1.0 + NEAR) * best.overG() + GRAMS_OF_LUCK * NEAR
        && one.valueLeft() <= best.valueLeft() + NEAR * allValue
        && one.momentSteps() <= (1.0 + NEAR) * best.momentSteps();
  }

  static double median(List<Double> sorted) {
    int n = sorted.size();
    return n == 0 ? Double.NaN : (sorted.get((n - 1) / 2) + sorted.get(n / 2)) / 2.0;
  }
}
