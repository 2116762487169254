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
 */
public record SpaceRoom(Space space, Optional<BoxMm> largestGap, long freeMl, Optional<Left> left) {
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
