package kitstow.planner.android;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.LoadPlanner;
import kitstow.planner.json.CatalogueReader;
import kitstow.planner.json.NamedText;
import kitstow.planner.json.Outcome;
import kitstow.planner.json.PlanWriter;
import kitstow.planner.json.ScenarioReader;
import kitstow.planner.model.Catalogue;
import kitstow.planner.model.Scenario;
import kitstow.planner.report.CheckReport;
import kitstow.planner.solver.PlanSearch;

/**
 * From texts to a judged plan and back to text: all the library does for an app. Runs on the
 * desktop as it is and again from a phone's byte code, so only texts and numbers go in and out.
 */
public final class OneSolve {
  private OneSolve() {}

  /** Plans with every rule on and returns the plan as JSON. */
  public static String plan(String[] catalogue, String scenario, long seed, long steps) {
    PlanSearch.Request request =
        new PlanSearch.Request(
            scenario(catalogue, scenario), seed, steps, /* seconds= */ 0.0, /* threads= */ 1);
    CheckReport report = LoadPlanner.plan(request, best -> {}, () -> false);
    return PlanWriter.write(report.situation().loading().plan());
  }

  /** Reads a scenario that must be sound. */
  static Scenario scenario(String[] catalogue, String scenario) {
    List<NamedText> files = new ArrayList<>();
    for (String text : catalogue) {
      files.add(new NamedText("catalogue-" + files.size(), text));
    }
    Catalogue entries = value(CatalogueReader.read(files));
    return value(ScenarioReader.read(scenario, entries));
  }

  private static <T> T value(Outcome<T> outcome) {
    return outcome.match(
        Outcome.Read::value,
        refused -> {
          throw new IllegalArgumentException(refused.report().text());
        });
  }
}
