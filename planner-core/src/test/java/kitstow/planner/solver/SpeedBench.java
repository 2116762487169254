package kitstow.planner.solver;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collection;
import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/** How long the parts of a search and of a check take once they are warm. Prints a table. */
@Tag("speed")
class SpeedBench {
  @Test
  void partsAreTimed() throws RunnerException {
    Collection<RunResult> results =
        new Runner(new OptionsBuilder().include(SpeedParts.class.getName()).build()).run();
    System.out.println("| Part | µs | ± µs |");
    System.out.println("|---|---|---|");
    for (RunResult result : results) {
      System.out.printf(
          Locale.ROOT,
          "| %s | %.1f | %.1f |%n",
          result.getPrimaryResult().getLabel(),
          result.getPrimaryResult().getScore(),
          result.getPrimaryResult().getScoreError());
    }
    assertThat(results).hasSize(5).allMatch(one -> one.getPrimaryResult().getScore() > 0.0);
  }
}
