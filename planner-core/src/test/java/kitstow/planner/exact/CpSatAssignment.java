package kitstow.planner.exact;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.ArrayList;
import java.util.List;

/**
 * The best assignment of jobs to agents, proved by CP-SAT level by level: most value first, then
 * least cost with that value held. Knows nothing of {@link ExactAssignment} but its terms.
 */
public final class CpSatAssignment {
  private final CpModel model = new CpModel();
  private final BoolVar[][] given;

  private CpSatAssignment(long[][] mass, long[] capacity) {
    this.given = new BoolVar[mass.length][capacity.length];
    for (BoolVar[] agents : given) {
      for (int agent = 0; agent < agents.length; agent++) {
        agents[agent] = model.newBoolVar("");
      }
      model.addAtMostOne(agents);
    }
    for (int agent = 0; agent < capacity.length; agent++) {
      LinearExprBuilder load = LinearExpr.newBuilder();
      for (int job = 0; job < mass.length; job++) {
        load.addTerm(given[job][agent], mass[job][agent]);
      }
      model.addLessOrEqual(load, capacity[agent]);
    }
  }

  /** Solves one case, in the terms of {@link ExactAssignment#solve}. */
  public static ExactAssignment.Optimum solve(
      long[][] value, long[][] mass, long[][] cost, long[] capacity) {
    CpSatAssignment first = new CpSatAssignment(mass, capacity);
    first.model.maximize(first.sum(value));
    long most = Math.round(CpSat.prove(first.model).orElseThrow().objectiveValue());
    CpSatAssignment second = new CpSatAssignment(mass, capacity);
    second.model.addEquality(second.sum(value), most);
    second.model.minimize(second.sum(cost));
    CpSolver solver = CpSat.prove(second.model).orElseThrow();
    return new ExactAssignment.Optimum(
        most, Math.round(solver.objectiveValue()), second.agents(solver));
  }

  private LinearExpr sum(long[][] of) {
    LinearExprBuilder sum = LinearExpr.newBuilder();
    for (int job = 0; job < given.length; job++) {
      sum.addWeightedSum(given[job], of[job]);
    }
    return sum.build();
  }

  private List<Integer> agents(CpSolver solver) {
    List<Integer> agents = new ArrayList<>();
    for (BoolVar[] one : given) {
      int agentOf = -1;
      for (int agent = 0; agent < one.length; agent++) {
        agentOf = solver.booleanValue(one[agent]) ? agent : agentOf;
      }
      agents.add(agentOf);
    }
    return agents;
  }
}
