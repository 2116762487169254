/**
 * Runs the screen: the terminal, the loop, and the threads that judge, search and read files; the
 * only package that knows Lanterna. It performs effects and returns messages. Start with {@link
 * kitstow.tui.runtime.ScreenSession}.
 */
@NullMarked
package kitstow.tui.runtime;

import org.jspecify.annotations.NullMarked;
