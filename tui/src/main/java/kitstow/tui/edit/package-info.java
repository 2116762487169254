/**
 * Forms: fields that are checked while they are typed, and what they make of a scenario and its
 * plan. Everything here returns a new design and leaves the old one as it is; nothing here knows
 * the state of the screen. Start with {@link kitstow.tui.edit.Form} and {@link
 * kitstow.tui.edit.Editor}.
 */
@NullMarked
package kitstow.tui.edit;

import org.jspecify.annotations.NullMarked;
