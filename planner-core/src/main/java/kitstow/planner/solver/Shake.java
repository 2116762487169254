package kitstow.planner.solver;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;

/** Packs a good part of a plan anew, to go on from somewhere else that is nearly as good. */
final class Shake {
  private static final double LEAST_SHARE = 0.08;
  private static final double MOST_SHARE = 0.4;
  private static final double BLINK = 0.15;

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

  /** A plan near another one. */
  static PlanningLoad of(PlanningLoad load, Random random) {
    PackingProblem problem = load.problem();
    Packing packing = new Packing(problem, PackingScore.baysOf(load));
    packing.follow(load);
    double share = LEAST_SHARE + (MOST_SHARE - LEAST_SHARE) * random.nextDouble();
    List<Integer> out = new ArrayList<>();
    for (int unit = 0; unit < problem.units().size(); unit++) {
      if (packing.placeOf(unit) == null || random.nextDouble() < share) {
        out.add(unit);
      }
    }
    for (int unit : out) {
      packing.assign(unit, null, 0, packing.rankOf(unit));
    }
    Collections.shuffle(out, random);
    out.sort(
        (a, b) ->
            Integer.compare(
                Construction.classOf(problem.units().get(a).item()),
                Construction.classOf(problem.units().get(b).item())));
    new Construction(problem).insert(packing, out, random, BLINK);
    return PlanningMapper.toPlanning(problem, packing);
  }
}
