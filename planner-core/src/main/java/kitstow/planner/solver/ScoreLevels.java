package kitstow.planner.solver;

import java.util.List;
import kitstow.planner.model.Item;
import kitstow.planner.model.ModuleChoice;
import kitstow.planner.model.Need;
import kitstow.planner.model.Settings;
import kitstow.planner.statics.Lever;
import org.optaplanner.core.api.score.buildin.bendablelong.BendableLongScore;

/**
 * The score from its parts, hard to soft: conflicts of modules; mass limits by grams over;
 * must-take left; value left; worst moving overhang moment in steps; handling. Where mass limits
 * are only reported they rank below must-take.
 *
 * @param conflicts modules that do not fit or stand in each other's way
 * @param overG grams over mass limits, less what is over with all gear home
 * @param mustLeft must-take units and modules left
 * @param valueLeft value of all else that is left
 * @param momentSteps worst moving moment in steps, rounded up
 * @param handling how handy and balanced it is; see {@link Handling}
 */
record ScoreLevels(
    long conflicts, long overG, long mustLeft, long valueLeft, long momentSteps, long handling) {
  /** As OptaPlanner compares it. */
  BendableLongScore toScore(Settings.MassLimits massLimits) {
    boolean keep = massLimits == Settings.MassLimits.KEEP;
    return BendableLongScore.of(
        new long[] {-conflicts},
        new long[] {
          keep ? -overG : -mustLeft, keep ? -mustLeft : -overG, -valueLeft, -momentSteps, -handling
        });
  }

  /**
   * The same with nothing but what is aboard, and what it overloads, told; where overload is only
   * reported nothing but what must come.
   */
  ScoreLevels onlyAboard(Settings.MassLimits massLimits) {
    return massLimits == Settings.MassLimits.KEEP
        ? new ScoreLevels(conflicts, overG, mustLeft, valueLeft, 0L, 0L)
        : new ScoreLevels(conflicts, 0L, mustLeft, 0L, 0L, 0L);
  }

  /** Steps in a moment, rounded up. */
  static long steps(long halfGMm, double stepNm) {
    double newtonMetres = Lever.newtonMetres(halfGMm, Lever.STANDARD_GRAVITY_M_S2);
    return (long) Math.ceil(newtonMetres / stepNm - 1e-9);
  }

  /** Must-take modules that are not fitted. */
  static long mustModulesLeft(List<ModuleChoice> modules, java.util.Set<String> fitted) {
    long left = 0L;
    for (ModuleChoice choice : modules) {
      left += choice.need() == Need.MUST && !fitted.contains(choice.module().id()) ? 1L : 0L;
    }
    return left;
  }

  /** Value of optional modules that are not fitted. */
  static long moduleValueLeft(List<ModuleChoice> modules, java.util.Set<String> fitted) {
    long left = 0L;
    for (ModuleChoice choice : modules) {
      boolean counted = choice.need() != Need.MUST && !fitted.contains(choice.module().id());
      left += counted ? choice.value() : 0L;
    }
    return left;
  }

  /** Value of one unit of an item when it is left. */
  static long valueOf(Item item) {
    return item.need() == Need.MUST ? 0L : item.value();
  }
}
