package kitstow.planner.solver;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Scenario;
import kitstow.planner.scenarios.ShippedFiles;
import kitstow.planner.statics.Lever;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * What it is worth that whole spaces are filled anew, block by block: the shipped scenarios with
 * and without, means over a few seeds, by processor time of one thread.
 */
@Tag("filling")
class FillingBench {
  private static final double[] SECONDS = {1.0, 3.0, 10.0};
  private static final int SEEDS = 4;

  @Test
  void fillingIsSetBesideUnitByUnit() {
    System.out.println(
        "| Scenario | units home and N·m at 1 s: without | with | 3 s | with | 10 s | with |");
    System.out.println("|---|---|---|---|---|---|---|");
    for (String name : ShippedFiles.scenarioNames()) {
      Scenario scenario = ShippedFiles.scenario(name);
      String[][] cells = {cells(scenario, false), cells(scenario, true)};
      StringBuilder row = new StringBuilder("| " + name);
      for (int i = 0; i < SECONDS.length; i++) {
        row.append(" | ").append(cells[0][i]).append(" | ").append(cells[1][i]);
      }
      System.out.println(row + " |");
      assertThat(cells[1]).hasSize(SECONDS.length);
    }
  }

  private static String[] cells(Scenario scenario, boolean fills) {
    int units = new PackingProblem(scenario).units().size();
    double[] home = new double[SECONDS.length];
    double[] momentNm = new double[SECONDS.length];
    for (long seed = 1L; seed <= SEEDS; seed++) {
      TimedSearch run = TimedSearch.of(scenario, seed, SECONDS[SECONDS.length - 1], fills);
      for (int i = 0; i < SECONDS.length; i++) {
        LoadPlan plan = run.at(SECONDS[i]).orElseThrow();
        home[i] += (double) (units - plan.placements().size()) / SEEDS;
        momentNm[i] +=
            Lever.newtonMetres(
                    PlainScore.worstMomentHalfGMm(scenario, plan), Lever.STANDARD_GRAVITY_M_S2)
                / SEEDS;
      }
    }
    String[] cells = new String[SECONDS.length];
    for (int i = 0; i < cells.length; i++) {
      cells[i] = String.format(Locale.ROOT, "%.1f, %.0f", home[i], momentNm[i]);
    }
    return cells;
  }
}
