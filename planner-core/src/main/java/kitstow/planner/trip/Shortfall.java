package kitstow.planner.trip;

import kitstow.planner.model.SupplyKind;

/**
 * A supply that ran out on a leg. The containers stay at nothing; the trip goes on as if driven.
 *
 * @param kind what ran out
 * @param legId the leg
 * @param missingMlOrG what the rest of the leg would have taken, rounded: millilitres of fuel and
 *     water, grams of food and gas
 * @param from when there was none left
 */
public record Shortfall(SupplyKind kind, String legId, long missingMlOrG, Moment from) {}
