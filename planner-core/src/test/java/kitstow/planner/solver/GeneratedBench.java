package kitstow.planner.solver;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import kitstow.planner.generated.BindingRules;
import kitstow.planner.generated.GeneratedScenarios;
import kitstow.planner.model.Item;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Scenario;
import kitstow.planner.report.CheckReport;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * All generated scenarios, each searched in full assert and its plan judged by both judges; then
 * how often every rule was in the way.
 */
@Tag("generated")
class GeneratedBench {
  private static final long MOVES = 2_000;
  private static final int THREADS = 2;
  private static final int ENOUGH = 20;

  /** What became of one scenario; {@code fault} is empty where nothing went wrong. */
  private record Result(
      int units, int home, long moves, Set<RuleId> broken, Set<RuleId> binding, String fault) {}

  @Test
  void allPlansPassTheAuditAndEveryRuleIsInTheWayOfSome()
      throws InterruptedException, ExecutionException {
    ExecutorService pool = Executors.newFixedThreadPool(THREADS);
    List<Future<Result>> futures = new ArrayList<>();
    for (int number = 0; number < GeneratedScenarios.ALL; number++) {
      int one = number;
      futures.add(pool.submit(() -> solve(one)));
    }
    List<Result> results = new ArrayList<>();
    for (Future<Result> future : futures) {
      results.add(future.get());
    }
    pool.shutdown();
    Set<RuleId> seldom = tell(results);

    assertThat(results).extracting(Result::fault).filteredOn(fault -> !fault.isEmpty()).isEmpty();
    assertThat(results).allMatch(result -> result.moves() >= MOVES);
    assertThat(results).allMatch(result -> result.units() >= 5 && result.units() <= 150);
    assertThat(results.stream().filter(result -> result.home() > 0)).hasSizeGreaterThan(60);
    assertThat(seldom).isEmpty();
  }

  private static Result solve(int number) {
    Scenario scenario = GeneratedScenarios.of(number);
    int units = scenario.items().stream().mapToInt(Item::quantity).sum();
    try {
      AssertedSearch.Outcome outcome = AssertedSearch.solve(scenario, number, MOVES);
      CheckReport report = AssertedSearch.judged(scenario, outcome.plan());
      return new Result(
          units,
          units - outcome.plan().placements().size(),
          outcome.moves(),
          BindingRules.broken(report),
          BindingRules.of(scenario, outcome.plan(), number),
          /* fault= */ "");
    } catch (RuntimeException | AssertionError e) {
      String fault = "generated scenario " + number + ": " + e.getMessage();
      System.out.println(fault);
      return new Result(units, 0, 0L, Set.of(), Set.of(), fault);
    }
  }

  /** Prints how often every rule was broken or bound. */
  private static Set<RuleId> tell(List<Result> results) {
    Set<RuleId> seldom = EnumSet.noneOf(RuleId.class);
    System.out.printf(Locale.ROOT, "%-20s %7s %7s %7s%n", "rule", "broken", "binding", "either");
    for (RuleId rule : RuleId.values()) {
      long broken = results.stream().filter(r -> r.broken().contains(rule)).count();
      long binding = results.stream().filter(r -> r.binding().contains(rule)).count();
      long either =
          results.stream()
              .filter(r -> r.broken().contains(rule) || r.binding().contains(rule))
              .count();
      System.out.printf(Locale.ROOT, "%-20s %7d %7d %7d%n", rule, broken, binding, either);
      if (either < ENOUGH) {
        seldom.add(rule);
      }
    }
    System.out.printf(
        Locale.ROOT,
        "%d scenarios, %d units, %d leave units at home, %d moves%n",
        results.size(),
        results.stream().mapToInt(Result::units).sum(),
        results.stream().filter(result -> result.home() > 0).count(),
        results.stream().mapToLong(Result::moves).sum());
    return seldom;
  }
}
