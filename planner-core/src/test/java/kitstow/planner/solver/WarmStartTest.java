package kitstow.planner.solver;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Scenario;
import kitstow.planner.scenarios.ShippedFiles;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A search that goes on from a plan starts where that plan is, gaps and all. */
class WarmStartTest {
  static List<String> planned() {
    return ShippedFiles.plannedNames();
  }

  @ParameterizedTest
  @MethodSource("planned")
  void aPlanMadeByHandIsTakenUpAsItIs(String name) {
    Scenario scenario = ShippedFiles.scenario(name);
    LoadPlan byHand = ShippedFiles.plan(name, scenario);
    PackingProblem problem = new PackingProblem(scenario);

    PlanningLoad load =
        PlanningMapper.toPlanning(problem, PlanningMapper.toPacking(problem, byHand));
    Packing packing = new Packing(problem, PackingScore.baysOf(load));
    packing.follow(load);

    assertThat(boxes(scenario, packing.plan(LoadPlan.Origin.HAND)))
        .isEqualTo(boxes(scenario, byHand));
  }

  private static Map<String, BoxMm> boxes(Scenario scenario, LoadPlan plan) {
    Map<String, BoxMm> boxes = new TreeMap<>();
    Loading.of(scenario, plan).placed().forEach((key, item) -> boxes.put(key, item.box()));
    return boxes;
  }
}
