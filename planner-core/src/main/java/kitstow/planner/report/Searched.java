package kitstow.planner.report;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import kitstow.planner.statics.Bound;

/**
 * How a plan was searched for, why what stays home does, and what room is left.
 *
 * @param seed random seed of the search that found it
 * @param steps limit in steps, if any
 * @param secondsLimit limit in time, if any
 * @param scoreCalculations plans scored, where it is counted
 * @param tookSeconds time the search took; not the same on every run
 * @param reasons why units stay home
 * @param rooms what still goes into each space
 * @param levers which single changes buy the most on the tightest limit
 * @param bound how far the plan can be from the best, where it was worked out
 */
public record Searched(
    long seed,
    OptionalLong steps,
    OptionalDouble secondsLimit,
    OptionalLong scoreCalculations,
    OptionalDouble tookSeconds,
    List<HomeReason> reasons,
    List<SpaceRoom> rooms,
    List<Lever> levers,
    Optional<Bound> bound) {
  /** Copies its collections. */
  public Searched {
    reasons = List.copyOf(reasons);
    rooms = List.copyOf(rooms);
    levers = List.copyOf(levers);
  }
}
