package kitstow.planner.json;

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
}
