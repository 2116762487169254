package kitstow.planner.planted;

import java.util.Set;

/**
 * A plan with one fault planted in it.
 *
 * @param plan the faulty plan
 * @param expected keys of the planted rule and of what it entails, worked out without the planner
 */
record Planted(SoundPlan plan, Set<String> expected) {}
