package kitstow.planner.solver;

import java.util.List;
import java.util.Map;
import java.util.Random;

/** Packs everything anew, to go on from somewhere else that owes nothing to any plan. */
final class Shake {
  /** How far the order strays when all is packed anew. */
  private static final double NOISE = 1.5;

  /** One in so many has a free module elsewhere. */
  private static final int ELSEWHERE = 3;

  private Shake() {}

  /**
   * Everything packed anew in an order of its own, with modules as in another plan but perhaps for
   * one; half of the time steered by the prices of the floor.
   *
   * @param urgency how often each unit has stayed home so far; such units go first (squeaky wheel
   *     optimisation, D. E. Joslin, D. P. Clements, 1999; from memory)
   */
  static PlanningLoad afresh(PlanningLoad load, Random random, int[] urgency) {
    Packing packing = new Packing(load.problem(), baysLike(load, random));
    FloorGuide guide = random.nextBoolean() ? load.problem().guide(load) : null;
    new Construction(load.problem(), guide).packAll(packing, random, NOISE, urgency);
    return PlanningMapper.toPlanning(load.problem(), packing);
  }

  private static Map<String, String> baysLike(PlanningLoad load, Random random) {
    Map<String, String> bays = PackingScore.baysOf(load);
    if (load.modules().isEmpty() || random.nextInt(ELSEWHERE) > 0) {
      return bays;
    }
    List<Map<String, String>> choices = load.problem().bayChoices(bays);
    return choices.get(random.nextInt(choices.size()));
  }
}
