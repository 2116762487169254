/**
 * Keys and what they do: a key as it was pressed, the actions there are, and the one list that ties
 * them together, from which keys are looked up and help is written. Knows no state and no terminal.
 * Start with {@link kitstow.tui.keys.KeyMap}.
 */
@NullMarked
package kitstow.tui.keys;

import org.jspecify.annotations.NullMarked;
