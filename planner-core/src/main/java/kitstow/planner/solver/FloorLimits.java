package kitstow.planner.solver;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.RuleId;

/** Mass limits of the floor in one state, each with its price. */
final class FloorLimits {
  private final List<double[]> weights = new ArrayList<>();
  private final List<Double> capacityKg = new ArrayList<>();
  private final int sites;

  private FloorLimits(int sites) {
    this.sites = sites;
  }

  /** No limits. */
  static FloorLimits none(int sites) {
    return new FloorLimits(sites);
  }

  /** All limits that hang on which space a thing is in; totals of the ute do not. */
  static FloorLimits of(Loading loading, LoadState state, LimitGroup group, int sites) {
    FloorLimits limits = new FloorLimits(sites);
    for (int i = 0; i < group.size(); i++) {
      LimitShape.Line line = group.line(i);
      boolean total = line.rule() == RuleId.GVM_LIMIT || line.rule() == RuleId.GCM_LIMIT;
      if (line.lever() != LimitShape.Lever.SPACE || line.members().isEmpty() || total) {
        continue;
      }
      double left = line.limitScaled() - line.constantScaled();
      for (LimitShape.FixedTerm term : line.fixed()) {
        left -= (double) state.massG(loading.indexOf(term.bodyKey())) * term.numerator();
      }
      double[] weight = new double[sites];
      for (LimitShape.Member member : line.members()) {
        weight[member.space()] += (double) member.numerator() / line.denominator();
      }
      limits.weights.add(weight);
      limits.capacityKg.add(left / line.denominator() / 1000.0);
    }
    return limits;
  }

  int count() {
    return weights.size();
  }

  double capacityKg(int limit) {
    return capacityKg.get(limit);
  }

  /** How much of a mass in a space counts in a limit. */
  double weight(int limit, int site) {
    return weights.get(limit)[site];
  }

  /** Price of a kilogram in every space. */
  double[] perKg(double[] prices) {
    double[] perKg = new double[sites];
    for (int l = 0; l < prices.length; l++) {
      for (int s = 0; s < sites; s++) {
        perKg[s] += prices[l] * weights.get(l)[s];
      }
    }
    return perKg;
  }
}
