package kitstow.tui.runtime;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.UUID;
import kitstow.planner.json.PlanReader;
import kitstow.planner.json.PlanWriter;
import kitstow.planner.json.ScenarioReader;
import kitstow.planner.json.ScenarioWriter;
import kitstow.planner.model.Catalogue;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Scenario;
import kitstow.tui.app.Source;
import kitstow.tui.cli.OutFile;
import kitstow.tui.edit.Design;

/**
 * Keeps what is not saved where it is found again after a crash: in the user's folder for the state
 * of programs, under a name made from that of the scenario's file.
 */
final class Recovery {
  private static final String SCENARIO = ".scenario.json";
  private static final String PLAN = ".plan.json";

  private Recovery() {}

  /** Writes a design; where that cannot be done, work goes on without. */
  static void keep(Source source, Design design) {
    try {
      Files.createDirectories(folder());
    } catch (IOException e) {
      return;
    }
    OutFile.write(file(source, SCENARIO), ScenarioWriter.write(design.scenario()));
    OutFile.write(file(source, PLAN), PlanWriter.write(design.plan()));
  }

  /** What was kept for some files, if it can be read and is not what they hold. */
  static Optional<Design> find(Source source, Design held) {
    Optional<String> scenarioText = text(file(source, SCENARIO));
    Optional<String> planText = text(file(source, PLAN));
    if (scenarioText.isEmpty() || planText.isEmpty()) {
      return Optional.empty();
    }
    Optional<Scenario> scenario =
        ScenarioReader.read(scenarioText.get(), Catalogue.EMPTY)
            .match(read -> Optional.of(read.value()), refused -> Optional.empty());
    return scenario.flatMap(
        of -> {
          Optional<LoadPlan> plan =
              PlanReader.read(planText.get(), of)
                  .match(read -> Optional.of(read.value()), refused -> Optional.empty());
          return plan.map(found -> new Design(of, found)).filter(found -> !found.equals(held));
        });
  }

  /** Removes what was kept for some files. */
  static void forget(Source source) {
    try {
      Files.deleteIfExists(file(source, SCENARIO));
      Files.deleteIfExists(file(source, PLAN));
    } catch (IOException e) {
      return; // it is offered again next time, and can be declined
    }
  }

  private static Optional<String> text(Path file) {
    try {
      return Files.exists(file) ? Optional.of(Files.readString(file)) : Optional.empty();
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  private static Path file(Source source, String ending) {
    String path = source.scenarioFile().toAbsolutePath().normalize().toString();
    UUID name = UUID.nameUUIDFromBytes(path.getBytes(StandardCharsets.UTF_8));
    return folder().resolve(name + ending);
  }

  /** {@code $XDG_STATE_HOME/kitstow}, or what stands for it where that is not set. */
  private static Path folder() {
    String told = System.getProperty("kitstow.state");
    String state = told == null ? System.getenv("XDG_STATE_HOME") : told;
    Path base =
        state == null || state.isEmpty()
            ? Path.of(System.getProperty("user.home", "."), ".local", "state")
            : Path.of(state);
    return base.resolve("kitstow");
  }
}
