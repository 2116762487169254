/**
 * Scenarios made out of a seed: small and large, half empty and overfull, with every rule in the
 * way of something now and then. All invented. Start with {@link
 * kitstow.planner.generated.GeneratedScenarios}.
 */
@NullMarked
package kitstow.planner.generated;

import org.jspecify.annotations.NullMarked;
