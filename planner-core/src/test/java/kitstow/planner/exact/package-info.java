/** Small cases solved to the proved optimum, to hold the search against. */
@NullMarked
package kitstow.planner.exact;

import org.jspecify.annotations.NullMarked;
