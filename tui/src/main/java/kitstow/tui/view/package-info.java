/**
 * Reports as text: tables, drawings to scale, sentences. Everything is lines of a given width, so
 * that a screen can show them as well as a printer; nothing here reads a file or prints. All
 * rounding is done here: loads up, margins down. Start with {@link kitstow.tui.view.ReportText}.
 */
@NullMarked
package kitstow.tui.view;

import org.jspecify.annotations.NullMarked;
