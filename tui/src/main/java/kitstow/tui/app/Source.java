package kitstow.tui.app;

import java.nio.file.Path;

/**
 * The files of what is open.
 *
 * @param scenarioFile file of the scenario
 * @param planFile file of the plan; it need not be there yet
 */
public record Source(Path scenarioFile, Path planFile) {}
