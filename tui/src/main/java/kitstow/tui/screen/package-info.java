/**
 * Draws whole frames from the state of the program, from 80x24 up; one class for each page. Nothing
 * here changes the state, reads a clock or asks the planner. Start with {@link
 * kitstow.tui.screen.View}.
 */
@NullMarked
package kitstow.tui.screen;

import org.jspecify.annotations.NullMarked;
