/**
 * How gear stands in a space: support, load path, clear columns, room kept clear, doors, slides,
 * bars and the way out. Judges any placement, typed by hand or solved; knows boxes and spaces, no
 * axle. May import model and geometry; statics and packing do not know each other. Start with
 * {@link kitstow.planner.packing.Contacts}.
 */
@NullMarked
package kitstow.planner.packing;

import org.jspecify.annotations.NullMarked;
