/**
 * Faults in what was given to the planner, as values: what is wrong, where, which rule it breaks
 * and what to do next. A plan that breaks a limit is no fault; it is a finding of the report. Knows
 * no format and no record of the trade, and imports nothing of ours. Start with {@link
 * kitstow.planner.problem.Problem}; {@link kitstow.planner.problem.Code} lists every sort of fault.
 */
@NullMarked
package kitstow.planner.problem;

import org.jspecify.annotations.NullMarked;
