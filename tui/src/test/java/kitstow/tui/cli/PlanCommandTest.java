package kitstow.tui.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.solver.PlanSearch;
import org.junit.jupiter.api.Test;

class PlanCommandTest {
  @Test
  void theProgressLineTellsTimeMomentAndWhatStaysHome() {
    assertThat(ProgressLine.text(null, 0.25)).isEqualTo("0.3 s: packing for the first time");
    assertThat(ProgressLine.text(best(4938.2, 3), 12.0))
        .isEqualTo("12.0 s: 4,938 N m behind the rear axle, 3 at home");
  }

  @Test
  void theProgressLineIsWrittenOverAndTakenAway() {
    StringWriter err = new StringWriter();
    ProgressLine line = new ProgressLine(new PrintWriter(err, true), /* shown= */ true);
    line.better(best(4938.2, 3));
    line.better(best(5200.0, 2));
    line.better(best(4000.0, 4));
    line.tick();
    line.end();
    assertThat(err.toString())
        .contains("5,200 N m")
        .startsWith("\r")
        .endsWith("\r")
        .doesNotContain("\n");
  }

  @Test
  void nothingIsWrittenWhereNobodyWatches() {
    StringWriter err = new StringWriter();
    ProgressLine line = new ProgressLine(new PrintWriter(err, true), /* shown= */ false);
    line.tick();
    line.end();
    assertThat(err.toString()).isEmpty();
  }

  private static PlanSearch.Best best(double momentNm, int unitsHome) {
    LoadPlan.Origin origin =
        new LoadPlan.Origin(
            "solver", OptionalLong.of(1L), OptionalLong.empty(), OptionalLong.empty());
    return new PlanSearch.Best(
        new LoadPlan("x", Map.of(), List.of(), origin), momentNm, unitsHome, 0L);
  }
}
