package kitstow.planner.solver;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.CRC32;
import kitstow.planner.generated.GeneratedScenarios;
import kitstow.planner.generated.OtherGear;
import kitstow.planner.json.ScenarioWriter;
import kitstow.planner.model.Scenario;
import kitstow.planner.scenarios.ShippedFiles;

/**
 * A scenario that searches are measured on.
 *
 * @param name what the tables call it
 * @param scenario the scenario
 */
record BenchRig(String name, Scenario scenario) {
  /** Rigs into which nearly all of their gear goes. */
  private static final List<String> BASES =
      List.of(
          "counter-1500", "counter-1700", "remote-fortnight", "towing-week", "workshop-drawers");

  /** Steps through the larger of the generated scenarios, without a divisor of their number. */
  private static final int STRIDE = 37;

  /** Tells this scenario from what it was before somebody touched it. */
  String print() {
    CRC32 sum = new CRC32();
    sum.update(ScenarioWriter.write(scenario).getBytes(StandardCharsets.UTF_8));
    return Long.toHexString(sum.getValue());
  }

  /**
   * The shipped scenarios and others.
   *
   * @param otherGear how many shipped ones with other gear
   * @param crowded how many generated ones with about twice as much gear as goes in
   */
  static List<BenchRig> all(int otherGear, int crowded) {
    List<BenchRig> rigs = new ArrayList<>();
    for (String name : ShippedFiles.scenarioNames()) {
      rigs.add(new BenchRig(name, ShippedFiles.scenario(name)));
    }
    for (int i = 0; i < otherGear; i++) {
      String base = BASES.get(i % BASES.size());
      rigs.add(new BenchRig(base + ", gear " + i, OtherGear.of(ShippedFiles.scenario(base), i)));
    }
    int larger = GeneratedScenarios.ALL - GeneratedScenarios.SMALL;
    for (int i = 0; i < crowded; i++) {
      int number = GeneratedScenarios.SMALL + i * STRIDE % larger;
      rigs.add(new BenchRig("generated " + number, GeneratedScenarios.of(number)));
    }
    return rigs;
  }
}
