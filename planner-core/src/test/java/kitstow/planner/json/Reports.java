package kitstow.planner.json;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Scenario;
import kitstow.planner.report.CheckReport;
import kitstow.planner.rules.Situation;

/** Reports of these tests. */
final class Reports {
  private Reports() {}

  /** The report on the scenario and plan that use every key. */
  static CheckReport everyKey() {
    Scenario scenario = TestFiles.scenario();
    LoadPlan plan = TestFiles.value(PlanReader.read(TestFiles.text("plan.json"), scenario));
    return CheckReport.of(Situation.of(Loading.of(scenario, plan)));
  }

  static String everyKeyJson() {
    return ReportWriter.write(everyKey());
  }

  /** The report on a scenario and plan that are shipped. */
  static String shippedJson(String name) {
    Path folder = Path.of(System.getProperty("kitstow.scenarios"));
    List<NamedText> catalogue = new ArrayList<>();
    for (String file : List.of("utes.json", "bodies.json", "modules.json", "gear.json")) {
      String text = FaultyFiles.text(folder.resolve("catalogue").resolve(file));
      catalogue.add(new NamedText(file, text));
    }
    Scenario scenario =
        TestFiles.value(
            ScenarioReader.read(
                FaultyFiles.text(folder.resolve(name + ".json")),
                TestFiles.value(CatalogueReader.read(catalogue))));
    String plan = FaultyFiles.text(folder.resolve(name + ".plan.json"));
    return json(Loading.of(scenario, TestFiles.value(PlanReader.read(plan, scenario))));
  }

  static String json(Loading loading) {
    return ReportWriter.write(CheckReport.of(Situation.of(loading)));
  }
}
