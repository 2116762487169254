package kitstow.tui.cli;

import java.nio.file.Path;
import java.util.Optional;
import kitstow.planner.json.PlanReader;
import kitstow.planner.json.ScenarioReader;
import kitstow.planner.model.Catalogue;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Scenario;
import org.jspecify.annotations.Nullable;

/**
 * A scenario and a plan for it, read from files.
 *
 * @param scenario scenario
 * @param plan plan
 * @param catalogue catalogue the scenario names entries of
 */
public record CheckInput(Scenario scenario, LoadPlan plan, Catalogue catalogue) {
  /**
   * A scenario alone.
   *
   * @param scenario scenario
   * @param catalogue catalogue it names entries of
   */
  public record Alone(Scenario scenario, Catalogue catalogue) {}

  /** Reads both; absent, with every fault that can be told noted, where they cannot be used. */
  public static Optional<CheckInput> read(
      Path scenarioFile, Path planFile, @Nullable Path catalogueFolder, InputFaults faults) {
    Optional<String> scenarioText = TextFile.read(scenarioFile, faults);
    Optional<String> planText = TextFile.read(planFile, faults);
    Optional<Alone> scenario = scenario(scenarioFile, scenarioText, catalogueFolder, faults);
    if (planText.isEmpty()) {
      return Optional.empty();
    }
    if (scenario.isEmpty()) {
      faults.in(planFile.toString(), PlanReader.readAlone(planText.get()));
      faults.remark(
          planFile + " was looked at alone: whether it fits can be told with a sound scenario.");
      return Optional.empty();
    }
    return PlanReader.read(planText.get(), scenario.get().scenario())
        .match(
            read -> {
              faults.in(planFile.toString(), read.warnings());
              return Optional.of(
                  new CheckInput(
                      scenario.get().scenario(), read.value(), scenario.get().catalogue()));
            },
            refused -> {
              faults.in(planFile.toString(), refused.report());
              return Optional.empty();
            });
  }

  /** Reads a scenario alone. */
  public static Optional<Scenario> readScenario(
      Path scenarioFile, @Nullable Path catalogueFolder, InputFaults faults) {
    return readAlone(scenarioFile, catalogueFolder, faults).map(Alone::scenario);
  }

  /** Reads a scenario and its catalogue. */
  public static Optional<Alone> readAlone(
      Path scenarioFile, @Nullable Path catalogueFolder, InputFaults faults) {
    return scenario(scenarioFile, TextFile.read(scenarioFile, faults), catalogueFolder, faults);
  }

  /** Without a whole catalogue a scenario is not looked at: it would seem to name what is not. */
  private static Optional<Alone> scenario(
      Path file, Optional<String> text, @Nullable Path catalogueFolder, InputFaults faults) {
    InputFaults ofCatalogue = new InputFaults();
    Optional<Catalogue> catalogue = CatalogueSource.read(catalogueFolder, file, ofCatalogue);
    faults.addAll(ofCatalogue);
    return text.isEmpty() || catalogue.isEmpty() || ofCatalogue.stop()
        ? Optional.empty()
        : scenario(file, text.get(), catalogue.get(), faults)
            .map(read -> new Alone(read, catalogue.get()));
  }

  private static Optional<Scenario> scenario(
      Path file, String text, Catalogue catalogue, InputFaults faults) {
    return ScenarioReader.read(text, catalogue)
        .match(
            read -> {
              faults.in(file.toString(), read.warnings());
              return Optional.of(read.value());
            },
            refused -> {
              faults.in(file.toString(), refused.report());
              return Optional.empty();
            });
  }
}
