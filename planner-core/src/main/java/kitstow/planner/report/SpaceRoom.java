package kitstow.planner.report;

import java.util.Optional;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Space;

/**
 * What still goes into a space.
 *
 * @param space the space
 * @param largestGap the largest box that is empty, vehicle frame
 * @param freeMl volume that nothing takes, millilitres
 * @param left mass that may still go in
 * @param tenMore what 10 kg more there do
 */
public record SpaceRoom(
    Space space, Optional<BoxMm> largestGap, long freeMl, Optional<Left> left, TenMore tenMore) {
  /**
   * What 10 kg more in the largest gap of a space do.
   *
   * @param momentNm to the rear overhang moment, newton metres
   * @param tightestKg to the limit that is tightest now, in the state where it is; below zero where
   *     they take load off it
   */
  public record TenMore(double momentNm, double tightestKg) {}

  /**
   * Mass left before a limit.
   *
   * @param kg kilograms, below zero where the limit is exceeded already
   * @param rule the limit that is reached first
   * @param subjectId what is limited
   * @param stateId state in which it is reached
   */
  public record Left(double kg, RuleId rule, String subjectId, String stateId) {}
}
