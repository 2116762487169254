/**
 * What follows from a plan for whoever packs by it: in which order things go in and where they are.
 * Data without layout. May import report, rules, solver and all below them. Start with {@link
 * kitstow.planner.advice.PackList}.
 */
@NullMarked
package kitstow.planner.advice;

import org.jspecify.annotations.NullMarked;
