package kitstow.planner.model;

/**
 * Mass an item gains on the trip: rubbish, wet canvas.
 *
 * @param perPersonDayG grams gained per person and day
 * @param upToG most it gains that way, in grams
 * @param wetG grams gained while a leg is wet
 */
public record Growth(long perPersonDayG, long upToG, long wetG) {}
