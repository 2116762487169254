package kitstow.planner.solver;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import kitstow.planner.model.Item;
import kitstow.planner.model.Space;
import kitstow.planner.packing.Wanted;
import org.jspecify.annotations.Nullable;

/**
 * Packs as the trade does: what must come first, then heavy and bulky before light, each unit into
 * the space where the whole load stays best: within limits, little behind the rear axle.
 */
final class Construction {
  private static final int MUCH_CHOICE = 4;

  private final PackingProblem problem;

  Construction(PackingProblem problem) {
    this.problem = problem;
  }

  /**
   * Packs everything into an empty packing.
   *
   * @param noise how far the order may stray, 0 for none
   */
  void packAll(Packing packing, Random random, double noise) {
    List<Integer> order = new ArrayList<>();
    double[] weight = new double[problem.units().size()];
    for (int i = 0; i < weight.length; i++) {
      order.add(i);
      weight[i] = weightOf(problem.units().get(i).item()) * (1.0 + noise * random.nextDouble());
    }
    order.sort(
        Comparator.comparingInt((Integer i) -> classOf(problem.units().get(i).item()))
            .thenComparingInt(i -> choice(packing, problem.units().get(i)))
            .thenComparing(Comparator.comparingDouble((Integer i) -> weight[i]).reversed()));
    insert(packing, order, /* keepRanks= */ false);
  }

  /** Spaces that can hold a unit at all; what has little choice goes before what has much. */
  private static int choice(Packing packing, Wanted wanted) {
    int takers = 0;
    for (Space space : packing.view().fromTheFront()) {
      takers += packing.view().mayHold(wanted, space) ? 1 : 0;
    }
    return Math.min(takers, MUCH_CHOICE);
  }

  /** Pinned and must-take things first. */
  private static int classOf(Item item) {
    if (item.pin().isPresent()) {
      return 0;
    }
    return switch (item.need()) {
      case MUST -> 1;
      case SHOULD -> 2;
      case NICE -> 3;
    };
  }

  /** Heavy and bulky first: kilograms and litres count alike. */
  private static double weightOf(Item item) {
    double litres = item.shapes().get(0).volumeMm3() / 1.0e6;
    return item.mass().massG() / 1000.0 + litres * 0.5;
  }

  /** Gives each unit in turn the space in which the whole load scores best. */
  void insert(Packing packing, List<Integer> order, boolean keepRanks) {
    int rank = keepRanks ? -1 : 0;
    for (int unit : order) {
      int rankNow = keepRanks ? packing.rankOf(unit) : rank++;
      packing.assign(unit, null, 0, rankNow);
      packing.assign(unit, bestSpace(packing, unit, rankNow), 0, rankNow);
    }
  }

  /**
   * The space in which a unit's mass acts least far behind the rear axle without more overload than
   * before; null where no space takes it so. Spaces are looked at from the front, and those that
   * lie wholly behind the best place so far are not.
   */
  private @Nullable String bestSpace(Packing packing, int unit, int rank) {
    Wanted wanted = problem.units().get(unit);
    long overBefore = packing.overG();
    String best = null;
    double bestReach = Double.MAX_VALUE;
    for (Space space : packing.view().fromTheFront()) {
      if (packing.view().reachMm(space.box().minXMm()) > bestReach) {
        break;
      }
      if (!packing.view().mayHold(wanted, space)) {
        continue;
      }
      packing.assign(unit, space.id(), 0, rank);
      double reach = packing.reachMm(unit);
      if (reach < bestReach && packing.overG() <= overBefore) {
        best = space.id();
        bestReach = reach;
      }
    }
    packing.assign(unit, null, 0, rank);
    return best;
  }
}
