/**
 * Parts of a screen: the frame that is drawn into, areas of it, gauges, lists, pictures of the
 * load. Knows neither the state of the program nor a terminal. Start with {@link
 * kitstow.tui.widget.Frame}.
 */
@NullMarked
package kitstow.tui.widget;

import org.jspecify.annotations.NullMarked;
