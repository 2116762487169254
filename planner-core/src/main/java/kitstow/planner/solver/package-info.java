/**
 * Finds plans: a search over which space each item goes to, in which order and how turned, with the
 * decoder of packing turning every order into places. The only package that knows OptaPlanner.
 * Start with {@link kitstow.planner.solver.PlanSearch}; {@link kitstow.planner.solver.TripTable} is
 * what the score is made of.
 */
@NullMarked
package kitstow.planner.solver;

import org.jspecify.annotations.NullMarked;
