package kitstow.planner.rules;

import kitstow.planner.model.RuleId;

/**
 * A figure of good practice in one state.
 *
 * @param rule rule
 * @param subjectId what it is about
 * @param unit unit of the figures
 * @param value figure
 * @param limit setting it is held against
 * @param margin how far it is within, below zero when beyond
 */
public record StateCheck(
    RuleId rule, String subjectId, String unit, double value, double limit, double margin) {}
