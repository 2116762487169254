/**
 * What everything weighs along a trip: the empty ute with its basis taken out, and the load states
 * of a plan at every moment where a mass stops changing evenly. Runs from event to event with exact
 * times, never in small steps, and rounds to a gram only when a state is written. No axle load and
 * no limit is computed here. May import model and geometry. Start with {@link
 * kitstow.planner.trip.Timeline}.
 */
@NullMarked
package kitstow.planner.trip;

import org.jspecify.annotations.NullMarked;
