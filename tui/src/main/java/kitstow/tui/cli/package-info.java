/**
 * The verbs of the command line: read files, ask the planner, print. What is printed is made in
 * view. Start with {@link kitstow.tui.cli.CheckCommand}.
 */
@NullMarked
package kitstow.tui.cli;

import org.jspecify.annotations.NullMarked;
