/**
 * Builders for tests: a generic rig to load, items, modules and moments of a trip. Round figures,
 * so that a test can show its arithmetic. Start with {@link
 * kitstow.planner.testkit.RigBuilder#aDualCab()}.
 */
@NullMarked
package kitstow.planner.testkit;

import org.jspecify.annotations.NullMarked;
