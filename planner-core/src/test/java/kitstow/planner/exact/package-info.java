/**
 * Small cases solved to the proved optimum, to hold the search against: by complete search and by
 * the constraint solver CP-SAT, beside each other where both can. The rules are written anew here;
 * of the planner only its terms for boxes, sizes and turns are used.
 */
@NullMarked
package kitstow.planner.exact;

import org.jspecify.annotations.NullMarked;
