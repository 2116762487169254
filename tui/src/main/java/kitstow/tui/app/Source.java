package kitstow.tui.app;

import java.nio.file.Path;

/**
 * The files of what is open.
 *
 * @param scenarioFile file of the scenario
 * @param planFile file of the plan; it need not be there yet
 * @param ours whether the scenario's file was written here, so that it may be written again
 */
public record Source(Path scenarioFile, Path planFile, boolean ours) {
  /** Files that somebody else may have written. */
  public Source(Path scenarioFile, Path planFile) {
    this(scenarioFile, planFile, /* ours= */ false);
  }
}
