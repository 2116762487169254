/**
 * Scenarios made out of their numbers: small and large, half empty and overfull, each with a theme
 * that has some rules in its way. All invented. Start with {@link
 * kitstow.planner.generated.GeneratedScenarios}.
 */
@NullMarked
package kitstow.planner.generated;

import org.jspecify.annotations.NullMarked;
