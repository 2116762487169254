/**
 * Findings, readings and the verdict as data, without layout or colour. One judge for every plan,
 * solved or typed by hand; never imports the solver. Start with {@link
 * kitstow.planner.report.CheckReport}.
 */
@NullMarked
package kitstow.planner.report;

import org.jspecify.annotations.NullMarked;
