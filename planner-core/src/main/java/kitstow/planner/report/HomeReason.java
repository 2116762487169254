package kitstow.planner.report;

import kitstow.planner.model.RuleId;

/**
 * Why a unit that stays home does not go into one space, all else staying where it is.
 *
 * @param key body key of the unit
 * @param spaceId the space
 * @param cause kind of obstacle
 * @param rule the first rule that fails in the best place found
 * @param subjectId what the rule is about, where it is a limit; else ""
 * @param stateId state in which a limit is exceeded most, else ""
 * @param shortBy by how much it fails; 0 where the rule has no amount
 * @param unit unit of the amount; "" where there is none
 */
public record HomeReason(
    String key,
    String spaceId,
    Cause cause,
    RuleId rule,
    String subjectId,
    String stateId,
    double shortBy,
    String unit) {
  /** Kinds of obstacle. */
  public enum Cause {
    /** It finds a place, but a limit would be exceeded. */
    OVER_LIMIT,
    /** A limit would be exceeded even with all else out of the space; told of what must come. */
    OVER_LIMIT_ALONE,
    /** It finds a place and keeps every limit: the search has left it without need. */
    NOTHING,
    /**
     * It would go in, were there not other things; the gap is too long, wide or high by so much.
     */
    GAP_TOO_SHORT,
    /** As above, across the vehicle. */
    GAP_TOO_NARROW,
    /** As above, upward. */
    GAP_TOO_LOW,
    /** It is longer than the empty space. */
    TOO_LONG,
    /** It is wider than the empty space. */
    TOO_WIDE,
    /** It is higher than the empty space. */
    TOO_HIGH,
    /** It does not pass the door. */
    DOOR,
    /** A rule bars it from the space however empty. */
    BARRED,
    /** A rule bars it with what is there. */
    BARRED_BY_OTHERS
  }
}
