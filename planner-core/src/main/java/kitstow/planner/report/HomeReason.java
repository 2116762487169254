package kitstow.planner.report;

import kitstow.planner.model.RuleId;

/**
 * Why a unit that stays home does not go into one space.
 *
 * @param key body key of the unit
 * @param spaceId the space
 * @param rule the first rule that fails in the best place found
 * @param shortBy by how much it fails; 0 where the rule has no amount
 * @param unit unit of the amount; "" where there is none
 */
public record HomeReason(String key, String spaceId, RuleId rule, double shortBy, String unit) {}
