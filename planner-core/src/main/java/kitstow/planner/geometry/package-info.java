/**
 * Boxes, turns, overlap and supported area in whole millimetres. Knows no vehicle, no mass and no
 * rule; imports nothing of ours. Start with {@link kitstow.planner.geometry.BoxMm}.
 */
@NullMarked
package kitstow.planner.geometry;

import org.jspecify.annotations.NullMarked;
