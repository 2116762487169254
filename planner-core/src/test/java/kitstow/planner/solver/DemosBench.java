package kitstow.planner.solver;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.stream.LongStream;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Scenario;
import kitstow.planner.scenarios.ShippedFiles;
import kitstow.planner.statics.Lever;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.optaplanner.core.api.score.buildin.bendablelong.BendableLongScore;

/**
 * Every shipped scenario packed in every way, side by side: construction alone, the best of two
 * hundred constructions that stray at random, the plan packed by hand where there is one, and the
 * better of what two seeds find side by side, as the command line searches on a machine of two
 * cores, that are given 1, 3, 10 and 30 seconds of processor time each, so that what else the
 * machine does matters little. Prints a table for DEVELOPERS.md.
 */
@Tag("demos")
class DemosBench {
  private static final int CONSTRUCTIONS = 200;
  private static final double MOST_NOISE = 1.5;
  private static final int[] SECONDS = {1, 3, 10, 30};
  private static final long SEED = Long.getLong("kitstow.seed", 1L);
  private static final int SEEDS = 2;

  /** One way of packing: its score in full, and what people ask for first. */
  private record Entry(ScoreLevels levels, BendableLongScore score, int home, double momentNm) {
    String cell() {
      return String.format(
          Locale.ROOT,
          "%d, %.0f (%d/%d/%d/%d/%d)",
          home,
          momentNm,
          levels.overG(),
          levels.mustLeft(),
          levels.valueLeft(),
          levels.momentSteps(),
          levels.handling());
    }
  }

  @Test
  void solvedPlansAreSetBesideAllOthers() {
    System.out.println(
        "| Scenario | construction | best of 200 | by hand | 1 s | 3 s | 10 s | 30 s |"
            + " 10 s against the best other |");
    System.out.println("|---|---|---|---|---|---|---|---|---|");
    for (String name : ShippedFiles.scenarioNames()) {
      Map<String, Entry> row = row(name);
      StringBuilder line = new StringBuilder("| " + name);
      row.values().forEach(entry -> line.append(" | ").append(entry == null ? "-" : entry.cell()));
      System.out.println(line + " | " + verdict(row) + " |");
      assertThat(row).hasSize(3 + SECONDS.length);
    }
  }

  private static Map<String, Entry> row(String name) {
    Scenario scenario = ShippedFiles.scenario(name);
    PackingProblem problem = new PackingProblem(scenario);
    PlanSearch.construct(problem, null);

    Map<String, Entry> row = new LinkedHashMap<>();
    row.put("construction", constructed(problem, new Random(SEED), 0.0));
    Random random = new Random(SEED);
    Entry best = constructed(problem, random, 0.0);
    for (int i = 1; i < CONSTRUCTIONS; i++) {
      Entry one = constructed(problem, random, MOST_NOISE * i / CONSTRUCTIONS);
      best = one.score().compareTo(best.score()) > 0 ? one : best;
    }
    row.put("best of 200", best);
    row.put(
        "by hand",
        ShippedFiles.plannedNames().contains(name)
            ? entry(problem, ShippedFiles.plan(name, scenario))
            : null);
    for (int seconds : SECONDS) {
      row.put(seconds + " s", solved(problem, seconds));
    }
    return row;
  }

  private static Entry solved(PackingProblem problem, int seconds) {
    return LongStream.range(SEED, SEED + SEEDS)
        .parallel()
        .mapToObj(seed -> TimedSearch.of(problem.scenario(), seed, seconds).last())
        .map(plan -> entry(problem, plan))
        .max(Comparator.comparing(Entry::score))
        .orElseThrow();
  }

  private static Entry constructed(PackingProblem problem, Random random, double noise) {
    Packing packing = new Packing(problem, PackingProblem.firstBays(problem.scenario()));
    new Construction(problem).packAll(packing, random, noise);
    return entry(problem, packing.plan(LoadPlan.Origin.HAND));
  }

  private static Entry entry(PackingProblem problem, LoadPlan plan) {
    AssertedSearch.judged(problem.scenario(), plan);
    ScoreLevels levels = PlainScore.levels(problem, plan, /* refused= */ 0);
    return new Entry(
        levels,
        levels.toScore(problem.scenario().settings().massLimits()),
        problem.units().size() - plan.placements().size(),
        Lever.newtonMetres(
            PlainScore.worstMomentHalfGMm(problem.scenario(), plan), Lever.STANDARD_GRAVITY_M_S2));
  }

  private static String verdict(Map<String, Entry> row) {
    Entry solved = row.get("10 s");
    Entry other = null;
    for (String way : List.of("construction", "best of 200", "by hand")) {
      Entry one = row.get(way);
      if (one != null && (other == null || one.score().compareTo(other.score()) > 0)) {
        other = one;
      }
    }
    if (solved == null || other == null) {
      return "-";
    }
    int order = solved.score().compareTo(other.score());
    String word = order > 0 ? "better" : order == 0 ? "equal" : "WORSE";
    return String.format(
        Locale.ROOT,
        "%s: %+d units home, %+.0f N·m",
        word,
        solved.home() - other.home(),
        solved.momentNm() - other.momentNm());
  }
}
