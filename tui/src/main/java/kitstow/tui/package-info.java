/** The terminal program: reads the command line and files, and shows what the planner answers. */
@NullMarked
package kitstow.tui;

import org.jspecify.annotations.NullMarked;
