package kitstow.planner.solver;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.BooleanSupplier;

/**
 * Walks from a settled plan to others that are a little worse, to settle again elsewhere: late
 * acceptance takes nothing worse than what it begins with, so a round that begins with the best
 * plan stays where it is (annealing that is heated anew; S. Kirkpatrick, C. D. Gelatt, M. P.
 * Vecchi, "Optimization by simulated annealing", 1983, from memory).
 */
final class Reheat {
  /**
   * By how much more of the moment, or of an overload that is only reported, plans may be worse.
   */
  private static final double WORSE = 0.06;

  /** Share of that at which it is enough. */
  private static final double ENOUGH = 0.8;

  /** Ruins tried at most; some plans cannot be made worse by small changes. */
  private static final int TRIES = 400;

  private final Packing packing;
  private final Random random;
  private final ScoreLevels cold;

  private Reheat(Packing packing, Random random) {
    this.packing = packing;
    this.random = random;
    this.cold = packing.levels();
  }

  /**
   * A plan that a few ruins lead to, with no less aboard; its moment is higher, unless the one
   * given had not settled.
   *
   * @param stopped whether to come to an end now
   */
  static PlanningLoad of(PlanningLoad load, Random random, BooleanSupplier stopped) {
    Packing packing = new Packing(load.problem(), PackingScore.baysOf(load));
    packing.follow(load);
    new Reheat(packing, random).walk(stopped);
    return PlanningMapper.toPlanning(load.problem(), packing);
  }

  private void walk(BooleanSupplier stopped) {
    ScoreLevels now = cold;
    for (int i = 0; i < TRIES && !isHot(now) && !stopped.getAsBoolean(); i++) {
      Ruin ruin = Ruin.of(packing, random);
      List<Integer> out = ruin.inOrder();
      List<Runnable> back = new ArrayList<>();
      for (int unit : out) {
        String space = packing.spaceOf(unit);
        long stance = packing.stanceOf(unit);
        int rank = packing.rankOf(unit);
        back.add(() -> packing.assign(unit, space, stance, rank));
      }
      RuinMoves.recreate(packing, ruin, out, random, /* prospect= */ null);
      ScoreLevels then = packing.levels();
      if (isTaken(then)) {
        now = then;
      } else {
        back.forEach(Runnable::run);
      }
    }
  }

  /** Whether a packing of such levels is no worse than it may be. */
  private boolean isTaken(ScoreLevels now) {
    return now.conflicts() <= cold.conflicts()
        && now.overG() <= (1.0 + WORSE) * cold.overG()
        && now.mustLeft() <= cold.mustLeft()
        && now.valueLeft() <= cold.valueLeft()
        && now.momentSteps() <= (1.0 + WORSE) * cold.momentSteps();
  }

  private boolean isHot(ScoreLevels now) {
    return now.momentSteps() >= (1.0 + ENOUGH * WORSE) * cold.momentSteps();
  }
}
