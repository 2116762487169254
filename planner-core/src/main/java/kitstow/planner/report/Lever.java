package kitstow.planner.report;

import kitstow.planner.model.LoadPlan;

/**
 * One change that takes load off a limit. It was carried out and judged again: nothing else breaks
 * by it, and nothing that is broken already gets worse.
 *
 * @param change what is done
 * @param gainKg by how much the tightest margin of the limit grows, kilograms
 * @param marginKg the tightest margin of the limit afterwards, below zero where it is still over
 * @param momentChangeNm by how much the largest moving rear overhang moment changes, newton metres;
 *     below zero where it falls
 */
public record Lever(Change change, double gainKg, double marginKg, double momentChangeNm) {
  /** What can be done. */
  public sealed interface Change permits Repacked, Drained {}

  /**
   * A change of the plan.
   *
   * @param step what is done
   * @param plan the plan with it
   */
  public record Repacked(Mend.Step step, LoadPlan plan) implements Change {}

  /**
   * A tank that starts the trip with less in it.
   *
   * @param tankId the tank
   * @param ml how much less, millilitres
   * @param kg the mass of that
   */
  public record Drained(String tankId, long ml, double kg) implements Change {}
}
