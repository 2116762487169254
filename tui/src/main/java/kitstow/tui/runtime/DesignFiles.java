package kitstow.tui.runtime;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import kitstow.planner.json.PlanWriter;
import kitstow.planner.json.ScenarioWriter;
import kitstow.tui.app.Msg;
import kitstow.tui.app.Source;
import kitstow.tui.cli.OutFile;
import kitstow.tui.edit.Design;

/**
 * Writes a design into files. A scenario that was changed on the screen goes into a file of its own
 * beside the first, which stays as its writer left it.
 */
final class DesignFiles {
  private static final String ENDING = ".json";
  private static final String OWN = "-own";

  private DesignFiles() {}

  static Msg save(Source source, Design design, boolean scenarioChanged) {
    Source target = scenarioChanged ? own(source) : source;
    if (scenarioChanged) {
      Optional<String> fault =
          OutFile.write(
              target.scenarioFile(), ScenarioWriter.write(OwnEntries.of(design.scenario())));
      if (fault.isPresent()) {
        return new Msg.NotSaved(fault.get());
      }
    }
    return OutFile.write(target.planFile(), PlanWriter.write(design.plan()))
        .<Msg>map(Msg.NotSaved::new)
        .orElse(new Msg.Saved(target, design));
  }

  /** The file itself if it is ours or not there yet, else one beside it that is not there yet. */
  private static Source own(Source source) {
    String name = source.scenarioFile().getFileName().toString();
    String stem = name.endsWith(ENDING) ? name.substring(0, name.length() - ENDING.length()) : name;
    if (source.ours() || stem.contains(OWN) || !Files.exists(source.scenarioFile())) {
      return new Source(source.scenarioFile(), source.planFile(), /* ours= */ true);
    }
    Path file = source.scenarioFile().resolveSibling(stem + OWN + ENDING);
    for (int i = 2; Files.exists(file); i++) {
      file = source.scenarioFile().resolveSibling(stem + OWN + "-" + i + ENDING);
    }
    return new Source(file, ScenarioFiles.planOf(file), /* ours= */ true);
  }
}
