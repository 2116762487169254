/**
 * Totals, centre of mass, axle loads, rear overhang moment, tyres and margins with their bands. The
 * lever and overhang formulae of one mass stand once, in {@link kitstow.planner.statics.Lever}, on
 * primitives; the rest sums bodies in a state. Static only: no slosh, no dynamic factor, no
 * suspension. May import trip, model and geometry. Source keys in brackets resolve in
 * WORKED-EXAMPLES.md of this module.
 */
@NullMarked
package kitstow.planner.statics;

import org.jspecify.annotations.NullMarked;
