package kitstow.planner.report;

import java.util.List;
import kitstow.planner.model.LoadPlan;

/**
 * What would put a finding right: changes of the plan that were carried out and judged again.
 * Nothing else breaks by them, and nothing that is broken already gets worse.
 *
 * @param findingKey key of the finding
 * @param outcome how far the changes go
 * @param steps the changes, in their order; none where nothing helps
 * @param before by how much the rule is broken
 * @param after by how much it is still broken after the steps
 * @param plan the plan with the steps carried out
 */
public record Mend(
    String findingKey,
    Outcome outcome,
    List<Step> steps,
    double before,
    double after,
    LoadPlan plan) {
  /** How far a mend goes. */
  public enum Outcome {
    /** Up to three changes put it right. */
    MENDED,
    /** No three changes do, but leaving more at home does. */
    BY_LEAVING_MORE,
    /** Nothing that was tried puts it right; the steps take off most. */
    NOT_MENDED
  }

  /** Kinds of change, the least trouble first. */
  public enum What {
    /** A unit stands otherwise in the space it is in. */
    TURN,
    /** A unit goes into another space. */
    MOVE,
    /** A module goes into another bay. */
    MOVE_MODULE,
    /** Two units change places. */
    SWAP,
    /** A unit that is at home comes along. */
    TAKE,
    /** A unit stays home. */
    LEAVE_HOME
  }

  /**
   * One change.
   *
   * @param what what is done
   * @param key body key of the unit, or module id
   * @param from space or bay it is in, or "" at home
   * @param to space or bay it goes to, or "" to stay home
   * @param kg its mass, full
   * @param withKey the unit it is swapped with, or ""
   * @param withKg mass of that unit
   */
  public record Step(
      What what, String key, String from, String to, double kg, String withKey, double withKg) {}

  /** Copies its collections. */
  public Mend {
    steps = List.copyOf(steps);
  }
}
