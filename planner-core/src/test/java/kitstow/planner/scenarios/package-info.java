/**
 * The shipped scenarios and the plans packed by hand that lie beside them: they read without
 * faults, and what the planner says of them holds.
 */
@NullMarked
package kitstow.planner.scenarios;

import org.jspecify.annotations.NullMarked;
