package kitstow.planner.trip;

import java.util.List;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;

/**
 * The load states of a plan over its trip. Masses change evenly between two moving states that
 * follow each other on a leg, so totals, axle loads, moments and loads on any part are extreme in
 * one of them; only the height of the centre of mass may peak inside a segment.
 *
 * <p>Liquid in a tank sinks with its level. Gear with a content keeps its box, with its mass at
 * half height however full it is, and people do not move about while driving: limits of the model.
 *
 * @param states moving states in their order in time, then the parked ones, then certification
 * @param segments stretches between moving states, in their order in time
 * @param stocks what each leg does to each supply
 * @param shortfalls supplies that ran out
 */
public record Timeline(
    List<LoadState> states,
    List<Segment> segments,
    List<Stock> stocks,
    List<Shortfall> shortfalls) {
  /** Copies its collections. */
  public Timeline {
    states = List.copyOf(states);
    segments = List.copyOf(segments);
    stocks = List.copyOf(stocks);
    shortfalls = List.copyOf(shortfalls);
  }

  /** Runs the trip of a loading. */
  public static Timeline of(Loading loading) {
    return new TripRun(loading).run();
  }
}
