/**
 * Plans where the kit goes in a vehicle, and says how the loaded vehicle stands.
 *
 * <p>All packages below this one share one set of axes: x runs rearward from the centre of the
 * front axle, y to the right of the centre plane, and z up from the ground. Lengths are in mm,
 * masses in g or kg, and moments in N·m; a name carries its unit wherever the type does not.
 */
@NullMarked
package kitstow.planner;

import org.jspecify.annotations.NullMarked;
