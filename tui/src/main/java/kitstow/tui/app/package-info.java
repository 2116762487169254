/**
 * What the screen knows and how it changes: one immutable state, messages, and the effects they ask
 * for. Nothing here draws, waits, reads a clock or a file. Start with {@link
 * kitstow.tui.app.Update}.
 */
@NullMarked
package kitstow.tui.app;

import org.jspecify.annotations.NullMarked;
