package kitstow.planner.exact;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.LinearExpr;
import java.util.List;

/** The most value of things that keep several limits at once, proved by CP-SAT. */
final class CpSatKnapsack {
  private CpSatKnapsack() {}

  static long most(Mknap1.Problem problem) {
    CpModel model = new CpModel();
    BoolVar[] taken = new BoolVar[problem.value().size()];
    for (int i = 0; i < taken.length; i++) {
      taken[i] = model.newBoolVar("");
    }
    for (int limit = 0; limit < problem.limits().size(); limit++) {
      model.addLessOrEqual(
          weighted(taken, problem.takes().get(limit)), problem.limits().get(limit));
    }
    model.maximize(weighted(taken, problem.value()));
    return Math.round(CpSat.prove(model).orElseThrow().objectiveValue());
  }

  private static LinearExpr weighted(BoolVar[] taken, List<Long> by) {
    return LinearExpr.weightedSum(taken, by.stream().mapToLong(Long::longValue).toArray());
  }
}
