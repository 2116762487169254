/**
 * Records of the trade: what a ute, a canopy, a module, an item, a trip and a plan are, and where
 * each thing stands. Masses are whole grams and places whole millimetres, as the files resolve
 * them, so that two judges can never differ by a rounding. May import geometry only. No limit is
 * judged here. Start with {@link kitstow.planner.model.Scenario}, then {@link
 * kitstow.planner.model.Rig} (where modules and spaces stand) and {@link
 * kitstow.planner.model.Loading} (every body).
 */
@NullMarked
package kitstow.planner.model;

import org.jspecify.annotations.NullMarked;
